package costrel.wort;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the text of a {@link TemperatureCourse}. */
final class CourseText {
    private static final String NUMBER = "([+-]?[0-9]+(?:\\.[0-9]+)?)";
    private static final Pattern HOLD = Pattern.compile("hold +" + NUMBER + " *°C +" + NUMBER + " *min");
    private static final Pattern LINEAR =
            Pattern.compile("linear +" + NUMBER + " *°C +to +" + NUMBER + " *°C +" + NUMBER + " *min");
    private static final Pattern NEWTON = Pattern.compile(
            "newton +" + NUMBER + " *°C +towards +" + NUMBER + " *°C +" + NUMBER + " */min +" + NUMBER + " *min");
    private static final String EXPECTED = "'hold 98 °C 20 min', 'linear 98 °C to 80 °C 30 min',"
            + " 'newton 100 °C towards 20 °C 0.005 /min 30 min', or 'none' alone";

    private CourseText() {}

    static TemperatureCourse parse(String text) {
        if (text.strip().equals("none")) {
            return TemperatureCourse.of();
        }
        List<TemperatureCourse.Segment> segments = new ArrayList<>();
        int start = 0;
        while (start <= text.length()) {
            int semicolon = text.indexOf(';', start);
            int end = semicolon < 0 ? text.length() : semicolon;
            segments.add(segment(segments.size() + 1, text.substring(start, end).strip()));
            start = end + 1;
        }
        return new TemperatureCourse(segments);
    }

    private static TemperatureCourse.Segment segment(int number, String text) {
        try {
            Matcher hold = HOLD.matcher(text);
            if (hold.matches()) {
                return new TemperatureCourse.Hold(figure(hold, 1), figure(hold, 2));
            }
            Matcher linear = LINEAR.matcher(text);
            if (linear.matches()) {
                return new TemperatureCourse.Linear(figure(linear, 1), figure(linear, 2), figure(linear, 3));
            }
            Matcher newton = NEWTON.matcher(text);
            if (newton.matches()) {
                return new TemperatureCourse.Newton(
                        figure(newton, 1), figure(newton, 2), figure(newton, 3), figure(newton, 4));
            }
        } catch (IllegalArgumentException outOfRange) {
            throw new IllegalArgumentException(
                    "temperature course: segment " + number + " '" + shown(text) + "': " + outOfRange.getMessage(),
                    outOfRange);
        }
        throw new IllegalArgumentException(
                "temperature course: segment " + number + ": expected " + EXPECTED + ", found '" + shown(text) + "'");
    }

    private static double figure(Matcher matcher, int group) {
        return Double.parseDouble(matcher.group(group));
    }

    private static String shown(String text) {
        return text.length() <= 80 ? text : text.substring(0, 80) + "...";
    }
}
