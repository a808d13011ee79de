/**
 * Documents on disk: sets, parts lists, shapes and rules in YAML, read with the place of every
 * mistake, written as a hand would write them, saved without ever losing what was there.
 */
package haftline.store;
