package counterstep.mirror;

/** Left, where the work goes down into the device, or right, where it comes back up. */
public enum Column {
    LEFT,
    RIGHT
}
