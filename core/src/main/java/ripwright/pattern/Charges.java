package ripwright.pattern;

import ripwright.saw.Labor;

/**
 * What labor costs in coins, rounded down.
 *
 * @param rip for one rip
 * @param crosscut for one crosscut
 * @param setting for one rip setting, its test included
 */
record Charges(long rip, long crosscut, long setting) {
    static Charges of(JobNumbers numbers, Coins coins) {
        Labor labor = numbers.job().laborOrUnpaid();
        boolean tested = numbers.job().testRip().tries() > 0;
        return new Charges(
                coins.labor(labor.ripMinutes()),
                coins.labor(labor.crosscutMinutes()),
                coins.labor(tested ? labor.settingMinutes().add(labor.ripMinutes()) : labor.settingMinutes()));
    }
}
