/** Curves of what a person has: published averages, bent by the person's own tests, or the person's own curve. */
package counterpull.engine.strength;
