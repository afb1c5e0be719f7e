/** Counts read out of what students wrote, looked at by the teacher before they are filed. */
package roundwright.desktop.messages;
