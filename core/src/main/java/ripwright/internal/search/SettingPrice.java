package ripwright.internal.search;

import java.util.function.LongUnaryOperator;

/**
 * What rip settings cost.
 *
 * @param ofWidth what the setting for a width in nanometers costs, its test included where there is one, in millionths of the
 *     currency
 */
public record SettingPrice(LongUnaryOperator ofWidth) {
    long millionths(long width) {
        return ofWidth.applyAsLong(width);
    }
}
