/** What the reports say, worked out away from the event thread and kept until it no longer holds. */
package roundwright.desktop.insight;
