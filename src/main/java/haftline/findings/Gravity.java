package haftline.findings;

/** How grave a finding is, gravest first. */
public enum Gravity {
    /** It cannot be made so. */
    STOP,
    /** It can be made, but will likely disappoint. */
    WARN,
    /** Worth knowing. */
    NOTE
}
