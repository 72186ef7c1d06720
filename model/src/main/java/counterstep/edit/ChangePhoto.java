package counterstep.edit;

import counterstep.model.Photo;
import counterstep.model.Procedure;

/**
 * Exchanges a photo for a changed one of the same id: its alternative text, say, or from where it
 * is seen. Turns are a matter of {@link TurnPhoto}, which keeps the callouts in their places.
 *
 * @param changed the photo as it shall be
 * @param name what a person would call this change: 'Change alternative text'
 */
public record ChangePhoto(Photo changed, String name) implements Edit {
    @Override
    public Procedure apply(Procedure before) {
        if (before.photos().stream().noneMatch(photo -> photo.id().equals(changed.id()))) {
            throw new IllegalArgumentException("no such id: " + changed.id());
        }
        return before.draft()
                .photos(
                        before.photos().stream()
                                .map(photo -> photo.id().equals(changed.id()) ? changed : photo)
                                .toList())
                .procedure();
    }
}
