package roundwright.desktop.chart;

import roundwright.notation.Terms;
import roundwright.pattern.Steps;
import roundwright.pattern.chart.ChartSetting;
import roundwright.pattern.chart.ChartWords;
import roundwright.pattern.chart.RoundChart;

/**
 * What a chart is of.
 *
 * @param title in words
 */
public record ChartSubject(String title, Steps steps, Terms terms, ChartSetting setting) {
    RoundChart chart() {
        return RoundChart.of(steps);
    }

    ChartWords words() {
        return new ChartWords(chart(), terms);
    }
}
