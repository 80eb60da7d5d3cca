/** How sure an answer is: what it rests on with standard uncertainties, bands by seeded draws, what contributes most, which reading next. */
package counterpull.engine.uncertainty;
