package roundwright.desktop.planning;

import roundwright.desktop.desk.Desk;
import roundwright.desktop.desk.Page;
import roundwright.desktop.strip.LessonEdges;
import roundwright.desktop.strip.StripPresenter;
import roundwright.group.RoundPlace;

/** Moves lessons' edges on the strip, while the plan is looked at. */
public final class LessonsOnStrip implements LessonEdges {
    private final Desk desk;
    private final StripPresenter strip;
    private final LessonsByHand lessons;

    public LessonsOnStrip(Desk desk, StripPresenter strip) {
        this.desk = desk;
        this.strip = strip;
        this.lessons = new LessonsByHand(desk, new ChosenLesson(desk));
    }

    @Override
    public boolean movable() {
        return desk.choice().page() == Page.PLAN;
    }

    @Override
    public String told(int lesson, int column) {
        return lessons.told(lesson, place(column));
    }

    @Override
    public void move(int lesson, int column) {
        lessons.moveStart(lesson, place(column));
    }

    private RoundPlace place(int column) {
        return strip.piece().columns().get(column).place();
    }
}
