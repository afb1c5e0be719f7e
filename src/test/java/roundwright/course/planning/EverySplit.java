package roundwright.course.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * Every split of a list of items, with every homework there may be, each priced from the definition alone. It shares no code
 * with the planner.
 */
final class EverySplit {
    private EverySplit() {}

    /** The least cost over every split of the kind asked for; infinite where there is none. */
    static double leastCost(PlanRequest request) {
        double[] least = {Double.POSITIVE_INFINITY};
        visit(request, 0, new ArrayList<>(), sessions -> {
            boolean asked = request.sessions().isEmpty() || request.sessions().getAsInt() == sessions.size();
            if (asked && sessions.containsAll(request.locked())) {
                least[0] = Math.min(least[0], cost(request, sessions));
            }
        });
        return least[0];
    }

    private static void visit(PlanRequest request, int from, List<Stretch> sessions, Consumer<List<Stretch>> visitor) {
        int size = request.items().size();
        if (from == size) {
            visitor.accept(sessions);
            return;
        }
        for (int to = from; to < size; to++) {
            for (int last = to; last < size && mayBeHomework(request, to, last, from); last++) {
                sessions.add(new Stretch(from, to, last));
                visit(request, last + 1, sessions, visitor);
                sessions.remove(sessions.size() - 1);
            }
        }
    }

    private static boolean mayBeHomework(PlanRequest request, int to, int last, int from) {
        if (request.locked().contains(new Stretch(from, to, last))) {
            return true;
        }
        double minutes = 0;
        for (int i = to + 1; i <= last; i++) {
            if (!request.items().get(i).homework()) {
                return false;
            }
            minutes += request.items().get(i).minutes();
        }
        return minutes <= request.settings().homeworkMinutes() + 1e-9;
    }

    /** The cost of a split, straight from its definition. */
    static double cost(PlanRequest request, List<Stretch> sessions) {
        double cost = 0;
        for (int number = 0; number < sessions.size(); number++) {
            boolean first = number == 0 && request.sessionsBefore() == 0;
            cost += cost(request, sessions.get(number), first, number == sessions.size() - 1);
        }
        return cost;
    }

    private static double cost(PlanRequest request, Stretch session, boolean first, boolean last) {
        double minutes = first ? 5 + 5 + 5 : 5 + 10 + 5 + 5;
        int introduced = 0;
        for (int i = session.from(); i <= session.to(); i++) {
            PlanItem item = request.items().get(i);
            minutes += item.working() + item.counting() + item.teaching();
            introduced += item.introduces().size();
        }
        double cost = 0;
        double length = request.settings().minutes();
        if (minutes > length) {
            cost += 4 * (minutes - length) * (minutes - length);
        } else if (!last) {
            cost += 0.25 * (length - minutes) * (length - minutes);
        }
        int most = first ? 3 : request.settings().mostNew();
        if (introduced > most) {
            cost += 4.0 * (introduced - most) * (introduced - most);
        }
        cost += stop(request.items(), session.to());
        return session.last() > session.to() ? cost + 0.5 * stop(request.items(), session.last()) : cost;
    }

    private static double stop(List<PlanItem> items, int at) {
        PlanItem item = items.get(at);
        if (at + 1 == items.size() || item.endsPart()) {
            return 0;
        }
        if (item.prepares()) {
            return 6;
        }
        if (items.get(at + 1).range() == item.range()) {
            return 3;
        }
        return item.shaping() ? 2 : 1;
    }
}
