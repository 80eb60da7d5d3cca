package counterpull.engine.body;

import java.util.List;

/**
 * de Leva 1996, Table 4, as in its data files. VERT vertex, MIDG mid-gonion, SUPR suprasternale, XYPH xiphion, OMPH
 * omphalion, MIDH mid-hip, MIDS mid-shoulder, CERV cervicale, SJC EJC WJC HJC KJC AJC joint centres of shoulder, elbow,
 * wrist, hip, knee, ankle, STYL stylion, MET3 third knuckle, DAC3 tip of the third finger, LMAL lateral malleolus, SPHY
 * sphyrion, TTIP tip of the toes.
 */
final class DeLevaTable4 {
    // Numbers: mass, centre of mass, radii about the sagittal, transverse and longitudinal axis.
    static final List<DeLevaRow> MALE = List.of(
            row("Head", "VERT-MIDG", 0.0694, 0.5976, 0.362, 0.376, 0.312),
            row("Trunk", "SUPR-MIDH", 0.4346, 0.4486, 0.372, 0.347, 0.191),
            row("Upper trunk", "SUPR-XYPH", 0.1596, 0.2999, 0.716, 0.454, 0.659),
            row("Middle trunk", "XYPH-OMPH", 0.1633, 0.4502, 0.482, 0.383, 0.468),
            row("Lower trunk", "OMPH-MIDH", 0.1117, 0.6115, 0.615, 0.551, 0.587),
            row("Upper arm", "SJC-EJC", 0.0271, 0.5772, 0.285, 0.269, 0.158),
            row("Forearm", "EJC-WJC", 0.0162, 0.4574, 0.276, 0.265, 0.121),
            row("Hand", "WJC-MET3", 0.0061, 0.79, 0.628, 0.513, 0.401),
            row("Thigh", "HJC-KJC", 0.1416, 0.4095, 0.329, 0.329, 0.149),
            row("Shank", "KJC-AJC", 0.0433, 0.4395, 0.251, 0.246, 0.102),
            row("Foot", "HEEL-TTIP", 0.0137, 0.4415, 0.257, 0.245, 0.124),
            row("Head 2", "VERT-CERV", 0.0694, 0.5002, 0.303, 0.315, 0.261),
            row("Trunk 2", "CERV-MIDH", 0.4346, 0.5138, 0.328, 0.306, 0.169),
            row("Trunk 3", "MIDS-MIDH", 0.4346, 0.431, 0.384, 0.358, 0.197),
            row("Upper trunk 2", "CERV-XYPH", 0.1596, 0.5066, 0.505, 0.32, 0.465),
            row("Forearm 2", "EJC-STYL", 0.0162, 0.4608, 0.278, 0.267, 0.122),
            row("Hand 2", "WJC-DAC3", 0.0061, 0.3624, 0.288, 0.235, 0.184),
            row("Hand 3", "STYL-DAC3", 0.0061, 0.3691, 0.285, 0.233, 0.182),
            row("Hand 4", "STYL-MET3", 0.0061, 0.7948, 0.614, 0.502, 0.392),
            row("Shank 2", "KJC-LMAL", 0.0433, 0.4459, 0.255, 0.249, 0.103),
            row("Shank 3", "KJC-SPHY", 0.0433, 0.4524, 0.258, 0.253, 0.105));

    static final List<DeLevaRow> FEMALE = List.of(
            row("Head", "VERT-MIDG", 0.0668, 0.5894, 0.33, 0.359, 0.318),
            row("Trunk", "SUPR-MIDH", 0.4257, 0.4151, 0.357, 0.339, 0.171),
            row("Upper trunk", "SUPR-XYPH", 0.1545, 0.2077, 0.746, 0.502, 0.718),
            row("Middle trunk", "XYPH-OMPH", 0.1465, 0.4512, 0.433, 0.354, 0.415),
            row("Lower trunk", "OMPH-MIDH", 0.1247, 0.492, 0.433, 0.402, 0.444),
            row("Upper arm", "SJC-EJC", 0.0255, 0.5754, 0.278, 0.26, 0.148),
            row("Forearm", "EJC-WJC", 0.0138, 0.4559, 0.261, 0.257, 0.094),
            row("Hand", "WJC-MET3", 0.0056, 0.7474, 0.531, 0.454, 0.335),
            row("Thigh", "HJC-KJC", 0.1478, 0.3612, 0.369, 0.364, 0.162),
            row("Shank", "KJC-AJC", 0.0481, 0.4352, 0.267, 0.263, 0.092),
            row("Foot", "HEEL-TTIP", 0.0129, 0.4014, 0.299, 0.279, 0.139),
            row("Head 2", "VERT-CERV", 0.0668, 0.4841, 0.271, 0.295, 0.261),
            row("Trunk 2", "CERV-MIDH", 0.4257, 0.4964, 0.307, 0.292, 0.147),
            row("Trunk 3", "MIDS-MIDH", 0.4257, 0.3782, 0.379, 0.361, 0.182),
            row("Upper trunk 2", "CERV-XYPH", 0.1545, 0.505, 0.466, 0.314, 0.449),
            row("Forearm 2", "EJC-STYL", 0.0138, 0.4592, 0.263, 0.259, 0.095),
            row("Hand 2", "WJC-DAC3", 0.0056, 0.3427, 0.244, 0.208, 0.154),
            row("Hand 3", "STYL-DAC3", 0.0056, 0.3502, 0.241, 0.206, 0.152),
            row("Hand 4", "STYL-MET3", 0.0056, 0.7534, 0.519, 0.443, 0.327),
            row("Shank 2", "KJC-LMAL", 0.0481, 0.4416, 0.271, 0.267, 0.093),
            row("Shank 3", "KJC-SPHY", 0.0481, 0.4481, 0.275, 0.271, 0.094));

    private DeLevaTable4() {}

    private static DeLevaRow row(String segment, String endpoints, double... numbers) {
        return DeLevaRow.of(segment, endpoints, numbers);
    }
}
