package ripwright.plan;

import ripwright.measure.Length;

/**
 * What the saw delivers for one part.
 *
 * @param id unique in the plan
 * @param part the part's name
 * @param from where it starts, from the board's marked end, raw
 * @param length along the grain, sneak-up oversize included; it is as wide as its strip
 */
public record Blank(String id, String part, Length from, Length length) {}
