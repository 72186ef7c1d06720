import java.io.IOException;

/**
 * Draws the photos of the samples: line drawings of invented devices, in millimetres, as seen
 * slantwise from above. It writes the files into the photo folders and prints where each marked
 * thing lies, in fractions of width and height: the places of the callouts.
 */
public final class Draw {
    private Draw() {}

    public static void main(String[] arguments) throws IOException {
        String controller = "samples/orrin-c4-stick-unit.photos";
        String supply = "samples/bench-supply-fan.photos";
        Controller.cellBay(new Pen(6.0, -9, 0.78, 800, 590)).save(controller, "cell-bay.png");
        Controller.openBack(new Pen(6.4, -9, 0.78, 790, 600)).save(controller, "open-back.png");
        Controller.flatCable(new Pen(27, -16, 0.62, 800, 640)).save(controller, "flat-cable.png");
        Controller.boardAside(new Pen(6.0, -9, 0.78, 810, 740)).save(controller, "board-aside.png");
        BenchSupply.coverClosed(new Pen(4.1, 24, 0.62, 760, 640)).save(supply, "cover-screws.png");
        BenchSupply.capacitors(new Pen(4.5, 18, 0.74, 800, 660)).save(supply, "capacitors.png");
        BenchSupply.fanApart(new Pen(5.0, -58, 0.6, 790, 590)).save(supply, "fan-apart.png");
    }
}
