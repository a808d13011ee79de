/** Pictures of finished handles, shaded in the colours of their stock and metals, as PNG. */
package haftline.write.png;
