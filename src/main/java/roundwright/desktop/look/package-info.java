/**
 * The look of the window: named colours, type, spacing, marks and the few components that every page is made of. Colours and
 * sizes come from the named keys of the theme files beside this package's resources, never from painting code.
 */
package roundwright.desktop.look;
