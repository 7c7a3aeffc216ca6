package ripwright.testing;

/** What a drawn job may have beyond clear straight boards and plain parts. */
public enum Feature {
    /** Boards have defects; some bar every part, some only parts that show. */
    DEFECTS,
    /** Boards are wider at one end. */
    TAPER,
    /** Boards have edges that must be straightened. */
    EDGES,
    /** Such edges bow out; brings {@link #EDGES} along. */
    CROOK,
    /** Boards lose their ends. */
    TRIMS,
    /** Boards must still be milled. */
    ROUGH,
    /** Boards are one strip already. */
    RIPPED,
    /** Groups of parts come from one board. */
    TOGETHER,
    /** There are several species, and parts that take one, some or any. */
    SPECIES,
    /** There are several thicknesses. */
    THICKNESSES,
    /** Some parts show. */
    SHOW,
    /** Some parts are cut last, one at a time. */
    FITTED,
    /** Some blanks are longer than their parts. */
    SNEAK_UP,
    /** Some blanks are wider than their parts. */
    EDGE_ALLOWANCE,
    /** Offcuts are worth something. */
    SALVAGE,
    /** Time costs something. */
    LABOR,
    /** There are offcuts on the rack. */
    RACK,
    /** The saws have limits. */
    SAW_LIMITS,
    /** Settings are proved on test blanks. */
    TRIES,
    /** The job is in millimeters, on a grid of half a millimeter. */
    MILLIMETERS,
    /** Lengths are on a grid of 0.001 in instead, so that nothing comes out even. */
    OFF_GRID,
    /** The stack cannot make every part. */
    SHORT_STOCK
}
