/**
 * Laws of rubber: force, stiffness and stored energy of a strand from its stretch, and what it gives back while it
 * shortens. Knows only checks and constants.
 */
package counterpull.engine.elastic;
