/**
 * What a tape, an angle gauge, a scale with a strap and a set of repetitions say about a person, and how sure that is. Torques are
 * those of the joint, N·m, positive in the sense of the action tested; angles anatomical, rad. Pain ends a measurement; what an
 * effort that pain ended shows is a floor and no measure of strength.
 */
package counterpull.bench.person;
