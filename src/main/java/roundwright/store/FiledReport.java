package roundwright.store;

import roundwright.group.CountReport;
import roundwright.group.GroupId;

/** A count report together with the group it was made in. */
public record FiledReport(GroupId group, CountReport report) {}
