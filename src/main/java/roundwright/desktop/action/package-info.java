/** Everything the window can be told to do: one list, from which menus, buttons and key strokes are made. */
package roundwright.desktop.action;
