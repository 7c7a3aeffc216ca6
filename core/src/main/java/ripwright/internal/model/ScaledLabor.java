package ripwright.internal.model;

import ripwright.saw.Labor;

/**
 * What labor costs in scaled money, rounded down.
 *
 * @param rip for one rip
 * @param crosscut for one crosscut
 * @param setting for one rip setting, its test included
 */
public record ScaledLabor(long rip, long crosscut, long setting) {
    public static ScaledLabor of(JobNumbers numbers, ScaledMoney money) {
        Labor labor = numbers.job().laborOrUnpaid();
        boolean tested = numbers.job().testRip().tries() > 0;
        return new ScaledLabor(
                money.labor(labor.ripMinutes()),
                money.labor(labor.crosscutMinutes()),
                money.labor(tested ? labor.settingMinutes().add(labor.ripMinutes()) : labor.settingMinutes()));
    }
}
