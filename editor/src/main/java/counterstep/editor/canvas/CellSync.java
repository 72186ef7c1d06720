package counterstep.editor.canvas;

import com.mxgraph.model.mxCell;
import com.mxgraph.model.mxGeometry;
import com.mxgraph.model.mxIGraphModel;
import counterstep.model.LinkEnds;
import counterstep.model.StepId;
import java.util.HashMap;
import java.util.Map;

/**
 * Brings the cells to what a scene shows: compares by id and changes only what differs, as one
 * update.
 */
final class CellSync {
    private final StepCells graph;
    private final Map<StepId, mxCell> steps = new HashMap<>();
    private final Map<LinkEnds, mxCell> links = new HashMap<>();
    private Map<LinkEnds, Route> routes = Map.of();
    private boolean changed;

    CellSync(StepCells graph) {
        this.graph = graph;
    }

    void show(Scene scene) {
        graph.show(scene);
        changed = false;
        mxIGraphModel model = graph.getModel();
        model.beginUpdate();
        try {
            removeGone(model, scene);
            scene.cards().values().forEach(card -> step(model, card));
            scene.routes().keySet().forEach(link -> link(model, link));
        } finally {
            model.endUpdate();
        }
        if (changed || !scene.routes().equals(routes)) {
            graph.getView().invalidate();
            graph.getView().validate();
        }
        routes = scene.routes();
    }

    /** How many cells there are, steps and links. */
    int size() {
        return steps.size() + links.size();
    }

    private void removeGone(mxIGraphModel model, Scene scene) {
        links.entrySet()
                .removeIf(
                        entry -> {
                            boolean gone = !scene.routes().containsKey(entry.getKey());
                            if (gone) {
                                changed = true;
                                model.remove(entry.getValue());
                            }
                            return gone;
                        });
        steps.entrySet()
                .removeIf(
                        entry -> {
                            boolean gone = !scene.cards().containsKey(entry.getKey());
                            if (gone) {
                                changed = true;
                                model.remove(entry.getValue());
                            }
                            return gone;
                        });
    }

    private void step(mxIGraphModel model, Card card) {
        mxGeometry place = new mxGeometry(card.x(), card.y(), Measures.WIDTH, Measures.HEIGHT);
        mxCell known = steps.get(card.step());
        if (known == null) {
            changed = true;
            mxCell cell = new mxCell(card.step(), place, "");
            cell.setVertex(true);
            steps.put(card.step(), cell);
            model.add(
                    graph.getDefaultParent(), cell, model.getChildCount(graph.getDefaultParent()));
        } else if (!known.getGeometry().equals(place)) {
            changed = true;
            model.setGeometry(known, place);
        }
    }

    private void link(mxIGraphModel model, LinkEnds link) {
        if (!links.containsKey(link)) {
            changed = true;
            mxCell cell = new mxCell(link, new mxGeometry(), "");
            cell.setEdge(true);
            cell.getGeometry().setRelative(true);
            links.put(link, cell);
            model.add(graph.getDefaultParent(), cell, 0);
            model.setTerminal(cell, steps.get(link.before()), true);
            model.setTerminal(cell, steps.get(link.after()), false);
        }
    }
}
