package counterstep.json;

import counterstep.model.Attendance;
import counterstep.model.CalloutShape;
import counterstep.model.ConnectorKind;
import counterstep.model.DriveKind;
import counterstep.model.FastenerForm;
import counterstep.model.GroupRule;
import counterstep.model.Head;
import counterstep.model.JointKind;
import counterstep.model.Latch;
import counterstep.model.LinkOrigin;
import counterstep.model.OrderRule;
import counterstep.model.Phase;
import counterstep.model.ReleaseMethod;
import counterstep.model.Seat;
import counterstep.model.Severity;
import counterstep.model.SignalWord;
import counterstep.model.SourceKind;
import counterstep.model.ThreadKind;
import counterstep.model.TieKind;
import counterstep.model.TimeSource;
import counterstep.model.ToolKind;
import counterstep.model.Trial;
import counterstep.model.Verb;

/** All closed lists of words that a file uses. */
final class Vocabulary {
    static final Words<Attendance> ATTENDANCE =
            Words.of("attendance", Attendance.values(), Attendance::word);
    static final Words<CalloutShape> CALLOUT_SHAPE =
            Words.of("callout shape", CalloutShape.values(), CalloutShape::word);
    static final Words<ConnectorKind> CONNECTOR =
            Words.of("kind of connector", ConnectorKind.values(), ConnectorKind::word);
    static final Words<DriveKind> DRIVE =
            Words.of("kind of drive", DriveKind.values(), DriveKind::word);
    static final Words<FastenerForm> FORM =
            Words.of("form of fastener", FastenerForm.values(), FastenerForm::word);
    static final Words<GroupRule> GROUP_RULE =
            Words.of("rule of a group", GroupRule.values(), GroupRule::word);
    static final Words<Head> HEAD = Words.of("head", Head.values(), Head::word);
    static final Words<JointKind> JOINT =
            Words.of("kind of joint", JointKind.values(), JointKind::word);
    static final Words<Latch> LATCH = Words.of("latch", Latch.values(), Latch::word);
    static final Words<LinkOrigin> ORIGIN =
            Words.of("origin of a link", LinkOrigin.values(), LinkOrigin::word);
    static final Words<OrderRule> ORDER_RULE =
            Words.of("rule of the order", OrderRule.values(), OrderRule::word);
    static final Words<Phase> PHASE = Words.of("phase", Phase.values(), Phase::word);
    static final Words<ReleaseMethod> RELEASE =
            Words.of("way to release", ReleaseMethod.values(), ReleaseMethod::word);
    static final Words<Seat> SEAT = Words.of("seat", Seat.values(), Seat::word);
    static final Words<Severity> SEVERITY = Words.of("severity", Severity.values(), Severity::word);
    static final Words<SignalWord> SIGNAL =
            Words.of("signal word", SignalWord.values(), SignalWord::name);
    static final Words<SourceKind> SOURCE =
            Words.of("kind of energy source", SourceKind.values(), SourceKind::word);
    static final Words<ThreadKind> THREAD =
            Words.of("kind of thread", ThreadKind.values(), ThreadKind::word);
    static final Words<TieKind> TIE = Words.of("kind of tie", TieKind.values(), TieKind::word);
    static final Words<TimeSource> TIME_SOURCE =
            Words.of("source of the time", TimeSource.values(), TimeSource::word);
    static final Words<ToolKind> TOOL = Words.of("kind of tool", ToolKind.values(), ToolKind::word);
    static final Words<Trial> TRIAL = Words.of("trial", Trial.values(), Trial::word);
    static final Words<Verb> VERB = Words.of("verb", Verb.values(), Verb::word);

    private Vocabulary() {}
}
