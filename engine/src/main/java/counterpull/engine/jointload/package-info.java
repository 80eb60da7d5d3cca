/** What a joint torque means for a joint: the kneecap's contact stress. Net torque ignores co-contraction. */
package counterpull.engine.jointload;
