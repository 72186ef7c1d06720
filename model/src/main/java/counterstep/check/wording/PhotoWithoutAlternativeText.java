package counterstep.check.wording;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Phrases;
import counterstep.model.Photo;
import counterstep.model.PhotoId;
import counterstep.model.Severity;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.StepPhoto;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Who cannot see a photo, or whose copy lacks it, has only its alternative text. */
final class PhotoWithoutAlternativeText implements Check {
    @Override
    public About about() {
        return new About(
                "photo-without-alternative-text",
                Severity.HINT,
                "A photo has no alternative text.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        Map<PhotoId, StepId> shown = new HashMap<>();
        for (Step step : facts.procedure().steps()) {
            for (StepPhoto photo : step.photos()) {
                shown.putIfAbsent(photo.photo(), step.id());
            }
        }
        Map<List<StepId>, List<Photo>> mute =
                facts.procedure().photos().stream()
                        .filter(photo -> photo.alternative().isBlank())
                        .collect(
                                Collectors.groupingBy(
                                        photo -> steps(shown, photo),
                                        LinkedHashMap::new,
                                        Collectors.toList()));
        return mute.entrySet().stream().map(entry -> finding(entry.getKey(), entry.getValue()));
    }

    private static List<StepId> steps(Map<PhotoId, StepId> shown, Photo photo) {
        StepId step = shown.get(photo.id());
        return step == null ? List.of() : List.of(step);
    }

    private Finding finding(List<StepId> steps, List<Photo> photos) {
        boolean one = photos.size() == 1;
        String names =
                Phrases.list(photos.stream().map(photo -> "'" + photo.file() + "'").toList());
        String message =
                (one ? "Photo " : "Photos ")
                        + names
                        + (one ? " has" : " have")
                        + " no alternative text.";
        return about().finding(message, steps, List.of());
    }
}
