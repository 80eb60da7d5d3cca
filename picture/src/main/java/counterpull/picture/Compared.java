package counterpull.picture;

import counterpull.engine.profile.LimbProfile;

/**
 * One exercise or setup in a comparison.
 *
 * @param name as it stands beside its line ("knee extension, cuff 8 kg")
 * @param limb the limb that is looked at, of its profile
 */
public record Compared(String name, LimbProfile limb) {}
