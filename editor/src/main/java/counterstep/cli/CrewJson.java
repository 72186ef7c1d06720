package counterstep.cli;

import counterstep.crew.CrewPlan;
import counterstep.crew.CrewTimetable;
import counterstep.crew.CrewTimetable.PickUp;
import counterstep.crew.CrewTimetable.Work;
import counterstep.model.StepId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The timetable of a crew as other programs read it; times are null where there is none. */
final class CrewJson {
    private CrewJson() {}

    static Map<String, Object> of(Staffed staffed) {
        Optional<CrewPlan> plan = staffed.plan();
        Optional<CrewTimetable> shortest = plan.map(CrewPlan::shortest);
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("technicians", staffed.crew().technicians());
        json.put("secondHolds", staffed.crew().secondHolds());
        json.put("ofTheDocument", staffed.ofTheDocument());
        json.put("nobodyHolds", staffed.unheld().stream().map(StepId::toString).toList());
        json.put("minutes", shortest.map(found -> Minutes.ofTenths(found.tenths())));
        json.put("atLeast", plan.map(found -> Minutes.ofTenths(found.atLeast())));
        json.put("proved", plan.map(CrewPlan::proved));
        json.put(
                "pageMinutes",
                plan.flatMap(CrewPlan::downThePage).map(page -> Minutes.ofTenths(page.tenths())));
        json.put("steps", shortest.map(found -> list(found.works(), CrewJson::step)));
        json.put("pickUps", shortest.map(found -> list(found.pickUps(), CrewJson::pickUp)));
        return json;
    }

    private static <T> List<Map<String, Object>> list(
            List<T> all, Function<T, Map<String, Object>> form) {
        return all.stream().map(form).toList();
    }

    private static Map<String, Object> step(Work work) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", work.step().toString());
        json.put("technician", work.person());
        json.put("holds", work.holder().map(CrewJson::holder));
        json.put("start", Minutes.ofTenths(work.start()));
        json.put("handsEnd", Minutes.ofTenths(work.handsEnd()));
        json.put("end", Minutes.ofTenths(work.end()));
        return json;
    }

    private static String holder(CrewTimetable.Holder holder) {
        return holder.technician().map(number -> "technician " + number).orElse("second person");
    }

    private static Map<String, Object> pickUp(PickUp pickUp) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("technician", pickUp.person());
        json.put("tool", pickUp.tool().id().toString());
        json.put("start", Minutes.ofTenths(pickUp.start()));
        json.put("end", Minutes.ofTenths(pickUp.end()));
        return json;
    }
}
