package counterstep.editor.details;

import counterstep.model.Torque;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;

/** Torque in fields: centinewton metres, as a bench reads small ones. */
final class Torques {
    private Torques() {}

    static OptionalDouble centinewtonMetres(Optional<Torque> torque) {
        return torque.isPresent()
                ? OptionalDouble.of(
                        BigDecimal.valueOf(torque.get().newtonMetres())
                                .movePointRight(2)
                                .doubleValue())
                : OptionalDouble.empty();
    }

    static Optional<Torque> of(OptionalDouble centinewtonMetres) {
        return centinewtonMetres.isPresent()
                ? Optional.of(
                        new Torque(
                                BigDecimal.valueOf(centinewtonMetres.getAsDouble())
                                        .movePointLeft(2)
                                        .doubleValue()))
                : Optional.empty();
    }
}
