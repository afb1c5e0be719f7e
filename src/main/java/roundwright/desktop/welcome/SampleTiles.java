package roundwright.desktop.welcome;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import roundwright.desktop.desk.Desk;
import roundwright.desktop.look.Wrap;
import roundwright.desktop.work.Task;

/** The sample courses as tiles; pressing one opens it with an invented group that is half-way through. */
final class SampleTiles extends Wrap {
    private final transient Desk desk;
    private final transient Runnable opened;

    /** Tells the listener when a sample has been pressed. */
    SampleTiles(Desk desk, Runnable opened) {
        super(2);
        this.desk = desk;
        this.opened = opened;
        readSamples();
    }

    /** The first tile, where the samples have been read. */
    Optional<JComponent> first() {
        return getComponentCount() > 0 ? Optional.of((JComponent) getComponent(0)) : Optional.empty();
    }

    private void readSamples() {
        desk.work().submit(new Task<List<Sample>>() {
            @Override
            public List<Sample> away() {
                return Samples.names().stream()
                        .flatMap(name -> Sample.named(name).stream())
                        .toList();
            }

            @Override
            public void here(List<Sample> samples) {
                samples.forEach(sample -> add(new SampleTile(sample.course(), event -> open(sample))));
                revalidate();
                repaint();
                if (isShowing()) {
                    first().ifPresent(JComponent::requestFocusInWindow);
                }
            }

            @Override
            public void failed(Exception failure) {
                desk.tell(String.valueOf(failure.getMessage()));
            }
        });
    }

    private void open(Sample sample) {
        opened.run();
        sample.openOn(desk);
    }
}
