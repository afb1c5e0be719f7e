package roundwright.desktop.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import roundwright.desktop.OnEventThread;
import roundwright.desktop.Pictures;
import roundwright.desktop.SampleCourse;
import roundwright.desktop.look.Theme;
import roundwright.desktop.look.Tone;
import roundwright.notation.Span;
import roundwright.notation.Stitch;
import roundwright.notation.Terms;
import roundwright.pattern.Step;
import roundwright.pattern.Steps;
import roundwright.pattern.WorkedAs;
import roundwright.pattern.chart.ChartSetting;
import roundwright.pattern.chart.ChartSign;
import roundwright.pattern.chart.ChartWords;
import roundwright.pattern.chart.RoundChart;

@ExtendWith(OnEventThread.class)
class RoundChartTest {
    @BeforeEach
    void light() {
        Theme.LIGHT.install(1);
    }

    private static Steps steps(int count, int below) {
        return SampleCourse.round(1, count, below).steps().orElseThrow();
    }

    @Test
    void aDecreaseIsOneSignJoinedToTwoStitchesBelow() {
        RoundChart chart = RoundChart.of(steps(40, 44));
        assertEquals(40, chart.signs().size());
        assertEquals(44, chart.below().size());
        assertEquals(
                4,
                chart.signs().stream().filter(sign -> sign.below().size() == 2).count());
    }

    @Test
    void anIncreaseIsTwoSignsJoinedToOneStitchBelow() {
        RoundChart chart = RoundChart.of(steps(18, 12));
        List<ChartSign> increase = chart.signsOf(1);
        assertEquals(2, increase.size());
        assertEquals(increase.get(0).below(), increase.get(1).below());
        assertEquals(1, increase.get(0).below().size());
    }

    @Test
    void signsStandInWorkingOrderOnceRoundForAnyRound() {
        Random random = new Random(4);
        for (int run = 0; run < 500; run++) {
            List<Step> list = new ArrayList<>();
            int length = 1 + random.nextInt(60);
            for (int i = 0; i < length; i++) {
                list.add(SampleCourse.step(Step.Action.PLAIN, random.nextInt(4), random.nextInt(4)));
            }
            RoundChart chart = RoundChart.of(new Steps(list, Optional.empty()));
            double last = 0;
            for (ChartSign sign : chart.signs()) {
                assertTrue(
                        sign.angle() >= last - 1e-9 && sign.angle() <= 2 * Math.PI + 1e-9, "run " + run + ": " + list);
                last = sign.angle();
            }
            assertEquals(chart.takes(), chart.below().size(), "run " + run + ": " + list);
        }
    }

    @Test
    void arrowKeysGoThroughTheRoundInWords() {
        List<Integer> shown = new ArrayList<>();
        ChartPanel panel = panel(steps(6, 8), false, shown);
        for (String key : List.of("RIGHT", "RIGHT", "RIGHT", "END", "RIGHT", "HOME", "LEFT")) {
            panel.getActionMap()
                    .get(panel.getInputMap().get(KeyStroke.getKeyStroke(key)))
                    .actionPerformed(null);
        }
        assertEquals(List.of(0, 1, 2, 5, 5, 0, 0), shown);
        ChartWords words = new ChartWords(RoundChart.of(steps(6, 8)), Terms.UK);
        assertEquals("Stitch 3 of 6: decrease over the next 2", words.step(2));
        assertEquals(
                "Stitch 1 of 6: one double crochet in the next stitch",
                panel.getAccessibleContext().getAccessibleDescription());
    }

    private static ChartPanel panel(Steps steps, boolean leftHanded, List<Integer> shown) {
        ChartPanel panel = new ChartPanel(shown::add);
        panel.show(new ChartSubject("Tower, round 2", steps, Terms.UK, ChartSetting.ring(leftHanded)));
        return panel;
    }

    @Test
    void everySignOfTheTradeIsDrawn() {
        List<Step> all = new ArrayList<>();
        for (Stitch stitch : Stitch.values()) {
            for (Step.Loop loop : Step.Loop.values()) {
                all.add(new Step(Step.Action.PLAIN, stitch, 1, 1, loop, new Span(0, 0), Optional.empty()));
            }
        }
        all.add(SampleCourse.step(Step.Action.SKIP, 1, 0));
        all.add(SampleCourse.step(Step.Action.INCREASE, 1, 2));
        all.add(SampleCourse.step(Step.Action.DECREASE, 2, 1));
        Steps steps = new Steps(all, Optional.empty());
        ChartKey key = new ChartKey();
        key.show(new ChartSubject("All", steps, Terms.US, ChartSetting.ring(false)));
        Pictures.layOut(key, 1400, 900);
        Pictures.write(Pictures.paint(key), "chart-key");
        assertTrue(key.getComponentCount() > 100);
    }

    @Test
    void picturesOfCharts() {
        JPanel all = new JPanel(new java.awt.GridLayout(2, 3));
        all.setBackground(Tone.SURFACE.color());
        all.add(panel(steps(40, 44), false, new ArrayList<>()));
        ChartPanel chosen = panel(steps(18, 12), true, new ArrayList<>());
        chosen.getActionMap()
                .get(chosen.getInputMap().get(KeyStroke.getKeyStroke("RIGHT")))
                .actionPerformed(null);
        chosen.getActionMap()
                .get(chosen.getInputMap().get(KeyStroke.getKeyStroke("RIGHT")))
                .actionPerformed(null);
        all.add(chosen);
        all.add(panel(steps(8, 0), false, new ArrayList<>()));
        all.add(panel(steps(120, 120), false, new ArrayList<>()));
        all.add(panel(tall(), false, new ArrayList<>()));
        all.add(panel(steps(6, 12), false, new ArrayList<>()));
        Pictures.layOut(all, 1100, 720);
        Pictures.write(Pictures.paint(all), "charts");
        assertEquals(6, all.getComponentCount());
    }

    @Test
    void picturesOfRowsAndOvals() {
        JPanel all = new JPanel(new java.awt.GridLayout(3, 2));
        all.setBackground(Tone.SURFACE.color());
        for (WorkedAs worked : List.of(WorkedAs.ROWS, WorkedAs.OVAL)) {
            all.add(panel(steps(14, 0), worked, 1, false));
            all.add(panel(steps(18, 14), worked, 2, false));
        }
        all.add(panel(steps(36, 36), WorkedAs.ROWS, 3, true));
        all.add(panel(steps(36, 30), WorkedAs.OVAL, 3, true));
        Pictures.layOut(all, 1100, 900);
        Pictures.write(Pictures.paint(all), "charts-rows-ovals");
        assertEquals(6, all.getComponentCount());
    }

    private static ChartPanel panel(Steps steps, WorkedAs worked, int round, boolean leftHanded) {
        ChartPanel panel = new ChartPanel(step -> {});
        panel.show(new ChartSubject("Body", steps, Terms.UK, ChartSetting.of(worked, round, leftHanded)));
        return panel;
    }

    private static Steps tall() {
        List<Step> steps = new ArrayList<>();
        Stitch[] kinds = {Stitch.TREBLE, Stitch.HALF_TREBLE, Stitch.BOBBLE, Stitch.DOUBLE_TREBLE, Stitch.CHAIN};
        for (int i = 0; i < 30; i++) {
            Step.Loop loop = i % 7 == 0 ? Step.Loop.FRONT_POST : i % 5 == 0 ? Step.Loop.BACK : Step.Loop.BOTH;
            steps.add(
                    new Step(Step.Action.PLAIN, kinds[i % kinds.length], 1, 1, loop, new Span(0, 0), Optional.empty()));
        }
        return new Steps(steps, Optional.empty());
    }
}
