package haftline.handle;

/** How the finished piece is held; decides which handle guidance is applied. */
public enum Use {
    /** In the whole hand, with force: openers, shuckers, scoops. */
    POWER,
    /** By three fingers and thumb: table knives, spreaders, forks. */
    THREE_FINGERS,
    /** By the finger tips: picks, zesters, fine tools. */
    FINGERTIPS
}
