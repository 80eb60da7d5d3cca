package counterpull.engine.strength;

import static counterpull.engine.body.Action.ANKLE_DORSIFLEXION;
import static counterpull.engine.body.Action.ANKLE_PLANTARFLEXION;
import static counterpull.engine.body.Action.HIP_EXTENSION;
import static counterpull.engine.body.Action.HIP_FLEXION;
import static counterpull.engine.body.Action.KNEE_EXTENSION;
import static counterpull.engine.body.Action.KNEE_FLEXION;
import static counterpull.engine.body.Sex.FEMALE;
import static counterpull.engine.body.Sex.MALE;
import static counterpull.engine.strength.AgeGroup.MIDDLE;
import static counterpull.engine.strength.AgeGroup.SENIOR;
import static counterpull.engine.strength.AgeGroup.YOUNG;
import static counterpull.engine.strength.Anderson2007.Coefficients.of;

import java.util.List;

/**
 * Anderson, Madigan and Nussbaum 2007, Table 3, row by row: means, then standard deviations, each in the order C1 C2
 * C3 C4 C5 C6 B1 k1 B2 k2. A test holds every number to the data file.
 */
final class Anderson2007Table3 {
    static final List<Anderson2007> ROWS = List.of(new Anderson2007[] {
        new Anderson2007(
                HIP_EXTENSION,
                MALE,
                YOUNG,
                of(new double[] {0.161, 0.958, 0.932, 1.578, 3.19, 0.242, -1.21, -6.351, 0.476, 5.91}),
                of(new double[] {0.049, 0.201, 0.358, 0.286, 0.586, 0.272, 0.66, 0.97, 0.547, 4.955})),
        new Anderson2007(
                HIP_EXTENSION,
                FEMALE,
                YOUNG,
                of(new double[] {0.181, 0.697, 1.242, 1.567, 3.164, 0.164, -1.753, -6.358, 0.239, 3.872}),
                of(new double[] {0.047, 0.13, 0.418, 0.268, 0.542, 0.175, 1.93, 2.828, 0.292, 1.895})),
        new Anderson2007(
                HIP_EXTENSION,
                MALE,
                MIDDLE,
                of(new double[] {0.171, 0.922, 1.176, 1.601, 3.236, 0.32, -2.16, -8.073, 0.108, 4.593}),
                of(new double[] {0.043, 0.155, 0.195, 0.306, 0.622, 0.189, 1.297, 2.701, 0.091, 0.854})),
        new Anderson2007(
                HIP_EXTENSION,
                FEMALE,
                MIDDLE,
                of(new double[] {0.14, 0.83, 1.241, 1.444, 2.919, 0.317, -1.361, -7.128, 0.013, 6.479}),
                of(new double[] {0.032, 0.246, 0.365, 0.223, 0.45, 0.14, 1.294, 2.541, 0.02, 2.924})),
        new Anderson2007(
                HIP_EXTENSION,
                MALE,
                SENIOR,
                of(new double[] {0.144, 0.896, 1.125, 1.561, 3.152, 0.477, -2.671, -7.85, 0.092, 5.192}),
                of(new double[] {0.039, 0.124, 0.077, 0.184, 0.372, 0.368, 0.271, 3.402, 0.111, 1.691})),
        new Anderson2007(
                HIP_EXTENSION,
                FEMALE,
                SENIOR,
                of(new double[] {0.138, 0.707, 1.542, 1.613, 3.256, 0.36, -0.758, -7.545, 0.018, 6.061}),
                of(new double[] {0.003, 0.173, 0.279, 0.135, 0.273, 0.237, 0.613, 0.741, 0.031, 2.265})),
        new Anderson2007(
                HIP_FLEXION,
                MALE,
                YOUNG,
                of(new double[] {0.113, 0.738, -0.214, 2.095, 4.267, 0.218, 1.21, -6.351, -0.476, 5.91}),
                of(new double[] {0.025, 0.217, 0.245, 0.489, 0.995, 0.225, 0.66, 0.97, 0.547, 4.955})),
        new Anderson2007(
                HIP_FLEXION,
                FEMALE,
                YOUNG,
                of(new double[] {0.127, 0.65, -0.35, 2.136, 4.349, 0.156, 1.753, -6.358, -0.239, 3.872}),
                of(new double[] {0.033, 0.178, 0.232, 0.345, 0.702, 0.179, 1.93, 2.828, 0.292, 1.895})),
        new Anderson2007(
                HIP_FLEXION,
                MALE,
                MIDDLE,
                of(new double[] {0.107, 0.712, -0.192, 2.038, 4.145, 0.206, 2.16, -8.073, -0.108, 4.593}),
                of(new double[] {0.02, 0.248, 0.274, 0.318, 0.652, 0.088, 1.297, 2.701, 0.091, 0.854})),
        new Anderson2007(
                HIP_FLEXION,
                FEMALE,
                MIDDLE,
                of(new double[] {0.091, 0.812, -0.196, 2.145, 4.366, 0.186, 1.361, -7.128, -0.013, 6.479}),
                of(new double[] {0.016, 0.244, 0.209, 0.375, 0.765, 0.262, 1.294, 2.541, 0.02, 2.924})),
        new Anderson2007(
                HIP_FLEXION,
                MALE,
                SENIOR,
                of(new double[] {0.101, 0.762, -0.269, 1.875, 3.819, 0.296, 2.671, -7.85, -0.092, 5.192}),
                of(new double[] {0.025, 0.151, 0.234, 0.164, 0.335, 0.102, 0.271, 3.402, 0.111, 1.691})),
        new Anderson2007(
                HIP_FLEXION,
                FEMALE,
                SENIOR,
                of(new double[] {0.081, 0.625, -0.422, 2.084, 4.245, 0.196, 0.758, -7.545, -0.018, 6.061}),
                of(new double[] {0.008, 0.062, 0.214, 0.321, 0.654, 0.28, 0.613, 0.741, 0.031, 2.265})),
        new Anderson2007(
                KNEE_EXTENSION,
                MALE,
                YOUNG,
                of(new double[] {0.163, 1.258, 1.133, 1.517, 3.952, 0.095, 0, 0, -6.25, -4.521}),
                of(new double[] {0.04, 0.073, 0.073, 0.593, 1.546, 0.171, 0, 0, 2.617, 0.553})),
        new Anderson2007(
                KNEE_EXTENSION,
                FEMALE,
                YOUNG,
                of(new double[] {0.159, 1.187, 1.274, 1.393, 3.623, 0.173, 0, 0, -8.033, -5.25}),
                of(new double[] {0.028, 0.084, 0.181, 0.38, 0.989, 0.27, 0, 0, 3.696, 1.512})),
        new Anderson2007(
                KNEE_EXTENSION,
                MALE,
                MIDDLE,
                of(new double[] {0.156, 1.225, 1.173, 1.518, 3.954, 0.266, 0, 0, -12.83, -5.127}),
                of(new double[] {0.031, 0.063, 0.048, 0.363, 0.947, 0.06, 0, 0, 2.541, 2.148})),
        new Anderson2007(
                KNEE_EXTENSION,
                FEMALE,
                MIDDLE,
                of(new double[] {0.128, 1.286, 1.141, 1.332, 3.469, 0.233, 0, 0, -6.576, -4.466}),
                of(new double[] {0.016, 0.094, 0.077, 0.319, 0.832, 0.133, 0, 0, 1.958, 1.63})),
        new Anderson2007(
                KNEE_EXTENSION,
                MALE,
                SENIOR,
                of(new double[] {0.137, 1.31, 1.067, 1.141, 3.152, 0.386, 0, 0, -10.519, -5.662}),
                of(new double[] {0.017, 0.127, 0.024, 0.046, 0.04, 0.124, 0, 0, 1.896, 1.517})),
        new Anderson2007(
                KNEE_EXTENSION,
                FEMALE,
                SENIOR,
                of(new double[] {0.124, 1.347, 1.14, 1.066, 2.855, 0.464, 0, 0, -8.8, -6.763}),
                of(new double[] {0.018, 0.044, 0.124, 0.128, 0.221, 0.129, 0, 0, 6.141, 0.742})),
        new Anderson2007(
                KNEE_FLEXION,
                MALE,
                YOUNG,
                of(new double[] {0.087, 0.869, 0.522, 2.008, 5.233, 0.304, 0, 0, 6.25, -4.521}),
                of(new double[] {0.015, 0.163, 0.317, 1.364, 3.554, 0.598, 0, 0, 2.617, 0.553})),
        new Anderson2007(
                KNEE_FLEXION,
                FEMALE,
                YOUNG,
                of(new double[] {0.08, 0.873, 0.635, 1.698, 4.412, 0.175, 0, 0, 8.033, -5.25}),
                of(new double[] {0.015, 0.191, 0.287, 0.825, 2.139, 0.319, 0, 0, 3.696, 1.512})),
        new Anderson2007(
                KNEE_FLEXION,
                MALE,
                MIDDLE,
                of(new double[] {0.081, 0.986, 0.523, 1.83, 4.777, 0.23, 0, 0, 12.83, -5.127}),
                of(new double[] {0.017, 0.138, 0.212, 0.795, 2.067, 0.094, 0, 0, 2.541, 2.148})),
        new Anderson2007(
                KNEE_FLEXION,
                FEMALE,
                MIDDLE,
                of(new double[] {0.06, 0.967, 0.402, 1.693, 4.41, 0.349, 0, 0, 6.576, -4.466}),
                of(new double[] {0.015, 0.21, 0.273, 0.718, 1.871, 0.143, 0, 0, 1.958, 1.63})),
        new Anderson2007(
                KNEE_FLEXION,
                MALE,
                SENIOR,
                of(new double[] {0.069, 0.838, 0.437, 1.718, 4.476, 0.414, 0, 0, 10.519, -5.662}),
                of(new double[] {0.022, 0.084, 0.357, 0.716, 1.866, 0.201, 0, 0, 1.896, 1.517})),
        new Anderson2007(
                KNEE_FLEXION,
                FEMALE,
                SENIOR,
                of(new double[] {0.06, 0.897, 0.445, 1.121, 2.922, 0.389, 0, 0, 8.8, -6.763}),
                of(new double[] {0.005, 0.145, 0.21, 0.052, 0.135, 0.078, 0, 0, 6.141, 0.742})),
        new Anderson2007(
                ANKLE_PLANTARFLEXION,
                MALE,
                YOUNG,
                of(new double[] {0.095, 1.391, 0.408, 0.987, 3.558, 0.295, -0.0005781, -5.819, 0.967, 6.09}),
                of(new double[] {0.022, 0.089, 0.083, 0.595, 2.144, 0.214, 0.001193, 7.384, 0.323, 1.196})),
        new Anderson2007(
                ANKLE_PLANTARFLEXION,
                FEMALE,
                YOUNG,
                of(new double[] {0.104, 1.399, 0.424, 0.862, 3.109, 0.189, -0.005218, -4.875, 0.47, 6.425}),
                of(new double[] {0.034, 0.19, 0.186, 0.487, 1.76, 0.213, 0.01135, 6.77, 0.328, 1.177})),
        new Anderson2007(
                ANKLE_PLANTARFLEXION,
                MALE,
                MIDDLE,
                of(new double[] {0.114, 1.444, 0.551, 0.593, 2.128, 0.35, -0.001311, -10.943, 0.377, 8.916}),
                of(new double[] {0.029, 0.136, 0.103, 0.165, 0.578, 0.133, 0.003331, 10.291, 0.403, 3.119})),
        new Anderson2007(
                ANKLE_PLANTARFLEXION,
                FEMALE,
                MIDDLE,
                of(new double[] {0.093, 1.504, 0.381, 0.86, 3.126, 0.349, -2.888e-5, -17.189, 0.523, 7.888}),
                of(new double[] {0.026, 0.235, 0.143, 0.448, 1.613, 0.27, 3.562e-5, 7.848, 0.394, 1.141})),
        new Anderson2007(
                ANKLE_PLANTARFLEXION,
                MALE,
                SENIOR,
                of(new double[] {0.106, 1.465, 0.498, 0.49, 1.767, 0.571, -5.693e-5, -21.088, 0.488, 7.309}),
                of(new double[] {0.035, 0.136, 0.132, 0.262, 0.944, 0.313, 3.164e-5, 1.786, 0.258, 0.902})),
        new Anderson2007(
                ANKLE_PLANTARFLEXION,
                FEMALE,
                SENIOR,
                of(new double[] {0.125, 1.299, 0.58, 0.587, 1.819, 0.348, -2.35e-5, -12.567, 0.331, 6.629}),
                of(new double[] {0.006, 0.095, 0.115, 0.258, 0.423, 0.158, 2.535e-5, 10.885, 0.247, 2.186})),
        new Anderson2007(
                ANKLE_DORSIFLEXION,
                MALE,
                YOUNG,
                of(new double[] {0.033, 1.51, -0.187, 0.699, 1.94, 0.828, 0.0005781, -5.819, -0.967, 6.09}),
                of(new double[] {0.005, 0.19, 0.067, 0.108, 0.301, 0.134, 0.001193, 7.384, 0.323, 1.196})),
        new Anderson2007(
                ANKLE_DORSIFLEXION,
                FEMALE,
                YOUNG,
                of(new double[] {0.027, 1.079, -0.302, 0.864, 2.399, 0.771, 0.005218, -4.875, -0.47, 6.425}),
                of(new double[] {0.006, 0.271, 0.171, 0.446, 1.236, 0.206, 0.01135, 6.77, 0.328, 1.177})),
        new Anderson2007(
                ANKLE_DORSIFLEXION,
                MALE,
                MIDDLE,
                of(new double[] {0.028, 1.293, -0.284, 0.634, 1.759, 0.999, 0.001311, -10.943, -0.377, 8.916}),
                of(new double[] {0.005, 0.479, 0.178, 0.216, 0.601, 0.214, 0.003331, 10.291, 0.403, 3.119})),
        new Anderson2007(
                ANKLE_DORSIFLEXION,
                FEMALE,
                MIDDLE,
                of(new double[] {0.024, 1.308, -0.254, 0.596, 1.654, 1.006, 2.888e-5, -17.189, -0.523, 7.888}),
                of(new double[] {0.002, 0.339, 0.133, 0.148, 0.41, 0.284, 3.562e-5, 7.848, 0.394, 1.141})),
        new Anderson2007(
                ANKLE_DORSIFLEXION,
                MALE,
                SENIOR,
                of(new double[] {0.029, 1.419, -0.174, 0.561, 1.558, 1.198, 5.693e-5, -21.088, -0.488, 7.309}),
                of(new double[] {0.002, 0.195, 0.056, 0.188, 0.521, 0.29, 3.164e-5, 1.786, 0.258, 0.902})),
        new Anderson2007(
                ANKLE_DORSIFLEXION,
                FEMALE,
                SENIOR,
                of(new double[] {0.022, 1.096, -0.369, 0.458, 1.242, 1.401, 2.35e-5, -12.567, -0.331, 6.629}),
                of(new double[] {0.003, 0.297, 0.109, 0.089, 0.213, 0.427, 2.535e-5, 10.885, 0.247, 2.186}))
    });

    private Anderson2007Table3() {}
}
