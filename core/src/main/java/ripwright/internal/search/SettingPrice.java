package ripwright.internal.search;

/**
 * What one rip setting costs.
 *
 * @param millionths of the currency, its tests included
 */
public record SettingPrice(long millionths) {}
