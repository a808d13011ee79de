/**
 * What is cut out of sheet and held against the work: profile gauge, sizing slots, story rod,
 * copying template, and how they lie on a sheet.
 *
 * <p>Everything here is neutral geometry in mm: x along the lathe axis towards the butt, y away
 * from the axis. The profile is turned into lines and arcs once ({@link
 * haftline.template.ProfileEdge}) and from there on every offset is exact: a line gives a line, an
 * arc an arc, trimmed where they cross. A positive offset points outward: away from the axis for a
 * profile, away from the material for a loop. The JTS library is used for checks and for the
 * layout, never to make a line that is cut. The scenes for the file writers are built by {@code
 * haftline.drawing}.
 */
package haftline.template;
