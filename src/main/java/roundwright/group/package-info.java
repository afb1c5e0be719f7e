/** Groups, students, attendance, count reports; pace; reading counts out of messages. */
package roundwright.group;
