/** What keeps a teacher's records safe and to themselves: backups, going back to one, what is held about a student, its end. */
package roundwright.desktop.safety;
