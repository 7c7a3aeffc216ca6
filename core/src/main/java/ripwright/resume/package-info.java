/**
 * The day it goes wrong: what is in hand after some of a plan's steps and whatever else happened, as a job of its own whose
 * plan makes the rest. Read {@link ripwright.resume.Resume} first. Uses {@code measure} to {@code replay}, nothing that
 * searches. What it gives is immutable or never changes once made: safe on any thread.
 */
@NullMarked
package ripwright.resume;

import org.jspecify.annotations.NullMarked;
