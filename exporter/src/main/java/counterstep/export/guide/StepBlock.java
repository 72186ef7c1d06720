package counterstep.export.guide;

import java.util.List;

/**
 * A step as printed.
 *
 * @param number its place in page order, from 1
 * @param title a few words
 * @param hazards the notices before it, the most severe first
 * @param tools the tools picked up for it
 * @param text the instruction
 * @param actions what is done, in order
 * @param photos what it shows
 * @param remarks second person, safe to pause
 * @param then what is out, open or loose and off after it; how long; where it goes back
 */
public record StepBlock(
        int number,
        String title,
        List<HazardBlock> hazards,
        List<ToolTag> tools,
        TextNode text,
        List<ActionRow> actions,
        List<PhotoBlock> photos,
        List<String> remarks,
        List<String> then) {
    /** Copies the lists. */
    public StepBlock {
        hazards = List.copyOf(hazards);
        tools = List.copyOf(tools);
        actions = List.copyOf(actions);
        photos = List.copyOf(photos);
        remarks = List.copyOf(remarks);
        then = List.copyOf(then);
    }
}
