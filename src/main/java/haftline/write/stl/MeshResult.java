package haftline.write.stl;

/** What comes of meshing a handle. */
public sealed interface MeshResult {
    /**
     * The wood is one solid.
     *
     * @param mesh its surface
     */
    record Made(TurnedMesh mesh) implements MeshResult {}

    /**
     * The wood is no solid that can be meshed.
     *
     * @param reason why, a sentence for the user
     */
    record Refused(String reason) implements MeshResult {}
}
