/**
 * What simple tests say about a person, a machine or a piece of rubber, and how sure that is: readings in, an answer of the
 * engine's own kind out, with its uncertainty. Everything in SI. Each estimator is a pure function from a bench (the readings as
 * they were taken) to an {@link counterpull.bench.Answer}.
 *
 * <p>Uncertainty is said as in the Guide to the expression of uncertainty in measurement (JCGM 100:2008): a standard uncertainty is
 * one standard deviation; an interval holds the truth 95 times in 100.
 */
package counterpull.bench;
