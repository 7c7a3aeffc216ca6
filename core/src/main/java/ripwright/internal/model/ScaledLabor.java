package ripwright.internal.model;

import ripwright.saw.Labor;

/**
 * What labor costs in coins, rounded down.
 *
 * @param rip for one rip
 * @param crosscut for one crosscut
 * @param setting for one rip setting, its test included
 * @param untested for one rip setting without a test
 */
public record ScaledLabor(long rip, long crosscut, long setting, long untested) {
    public static ScaledLabor of(JobNumbers numbers, ScaledMoney coins) {
        Labor labor = numbers.job().laborOrUnpaid();
        boolean tested = numbers.job().testRip().tries() > 0;
        return new ScaledLabor(
                coins.labor(labor.ripMinutes()),
                coins.labor(labor.crosscutMinutes()),
                coins.labor(tested ? labor.settingMinutes().add(labor.ripMinutes()) : labor.settingMinutes()),
                coins.labor(labor.settingMinutes()));
    }
}
