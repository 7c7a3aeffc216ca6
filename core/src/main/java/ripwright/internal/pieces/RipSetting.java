package ripwright.internal.pieces;

import java.util.NavigableSet;

/**
 * One fence position and what it is used for.
 *
 * @param id the plan's id
 * @param width what it rips, in nanometers
 * @param thicknesses how thick the strips ripped there are, in nanometers
 * @param strips how many strips are ripped there
 * @param tested whether it must be tested before
 */
public record RipSetting(String id, long width, NavigableSet<Long> thicknesses, int strips, boolean tested) {}
