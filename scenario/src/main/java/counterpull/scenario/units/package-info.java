/**
 * Quantities with units and how people read and write them. Depends on nothing but the JDK, so that whatever shows a
 * number can use it.
 */
package counterpull.scenario.units;
