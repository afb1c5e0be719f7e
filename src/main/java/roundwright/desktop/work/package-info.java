/** Work that takes longer than a blink: what runs away from the event thread, and what runs on it afterwards. */
package roundwright.desktop.work;
