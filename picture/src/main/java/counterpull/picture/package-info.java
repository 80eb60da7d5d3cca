/**
 * Figure and charts as SVG, drawn from the engine's result records. Dependency-free and without I/O, so that page, card, report
 * and browser share one figure. Colours are tokens ({@link counterpull.picture.Ink}), people's units come in as a
 * {@link counterpull.picture.Wording}.
 */
package counterpull.picture;
