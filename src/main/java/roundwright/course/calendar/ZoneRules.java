package roundwright.course.calendar;

import biweekly.component.DaylightSavingsTime;
import biweekly.component.Observance;
import biweekly.component.StandardTime;
import biweekly.component.VTimezone;
import biweekly.util.DateTimeComponents;
import biweekly.util.UtcOffset;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.zone.ZoneOffsetTransition;

/** A time zone's rules as a calendar file carries them: each change of the clock from just before a run to its end. */
final class ZoneRules {
    private static final DateTimeFormatter BASIC = DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss");

    private ZoneRules() {}

    static VTimezone of(ZoneId zone, Instant from, Instant to) {
        VTimezone component = new VTimezone(zone.getId());
        java.time.zone.ZoneRules rules = zone.getRules();
        ZoneOffsetTransition change = rules.previousTransition(from.plusSeconds(1));
        if (change == null) {
            ZoneOffset offset = rules.getOffset(from);
            add(component, false, LocalDateTime.of(1970, 1, 1, 0, 0), offset, offset);
            change = rules.nextTransition(from);
        }
        for (; change != null && !change.getInstant().isAfter(to); change = rules.nextTransition(change.getInstant())) {
            boolean summer = rules.isDaylightSavings(change.getInstant());
            add(component, summer, change.getDateTimeBefore(), change.getOffsetBefore(), change.getOffsetAfter());
        }
        return component;
    }

    private static void add(VTimezone zone, boolean summer, LocalDateTime at, ZoneOffset before, ZoneOffset after) {
        Observance observance = summer ? new DaylightSavingsTime() : new StandardTime();
        observance.setDateStart(DateTimeComponents.parse(BASIC.format(at)));
        observance.setTimezoneOffsetFrom(new UtcOffset(before.getTotalSeconds() * 1000L));
        observance.setTimezoneOffsetTo(new UtcOffset(after.getTotalSeconds() * 1000L));
        zone.addComponent(observance);
    }
}
