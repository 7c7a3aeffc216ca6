/**
 * Instruments that judge plans from outside: seeded jobs with known answers, the obvious ways to plan, an independent
 * optimum for small jobs, a plain cost and a plain check of layouts. Free of JUnit, so that a bench can use them too; their
 * own tests lie beside them. Uses {@code measure} to {@code job} and the record {@code pattern.Layout}, and shares no
 * arithmetic with what it judges.
 */
@NullMarked
package ripwright.testing;

import org.jspecify.annotations.NullMarked;
