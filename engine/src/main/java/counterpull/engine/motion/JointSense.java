package counterpull.engine.motion;

import counterpull.engine.body.Joint;

/**
 * How an anatomical joint sits in a chain: its angle is angleSign · (direction of its segment − direction of the segment before it)
 * + offset, its torque torqueSign · (counter-clockwise torque on its segment by the one before it). In a chain that starts at the
 * ground both signs are the reverse of those of a hanging limb.
 *
 * @param joint the joint
 * @param angleSign +1 or −1
 * @param offset rad; for the first joint of a chain it holds the direction of what does not move
 * @param torqueSign +1 or −1: what turns the chain's torque into that of the joint's named action
 */
public record JointSense(Joint joint, int angleSign, double offset, int torqueSign) {}
