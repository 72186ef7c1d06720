package counterstep.ledger;

import counterstep.links.Precedence;
import counterstep.model.EnergySource;
import counterstep.model.Item;
import counterstep.model.ItemId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The tracks of all items and the walks along them, each made when it is first asked for. */
final class Tracks {
    private final Deeds deeds;
    private final Precedence precedence;
    private final int limit;
    private final Map<ItemId, Track> tracks = new HashMap<>();
    private final Map<ItemId, Optional<Walk>> walks = new HashMap<>();

    Tracks(Deeds deeds, Precedence precedence, int limit) {
        this.deeds = deeds;
        this.precedence = precedence;
        this.limit = limit;
    }

    Track of(ItemId item) {
        return tracks.computeIfAbsent(item, id -> track(deeds.index().item(id)));
    }

    private Track track(Item item) {
        return item instanceof EnergySource source
                ? Track.of(deeds, source, precedence)
                : Track.of(deeds, List.of(item));
    }

    /** The walk along the track of an item; empty if there is too much of it. */
    Optional<Walk> walk(ItemId item) {
        return walks.computeIfAbsent(item, id -> Walk.of(of(id), precedence, limit));
    }
}
