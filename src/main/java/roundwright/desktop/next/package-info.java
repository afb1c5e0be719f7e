/** One student's page, fit to be turned towards them: what they can do, what comes next, the count to reach. */
package roundwright.desktop.next;
