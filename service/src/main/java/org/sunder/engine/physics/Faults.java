package org.sunder.engine.physics;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.Quantity;

/** Collects faults, so that all are told at once. */
public final class Faults {

    private final List<SetupFault> found = new ArrayList<>();

    public void add(String path, Object value, String detail, String allowed) {
        found.add(new SetupFault(path, String.valueOf(value), detail, allowed));
    }

    public void add(SetupFault fault) {
        found.add(fault);
    }

    /** A fault unless the quantity is absent or in range; true when it may be used. */
    public boolean range(String path, @Nullable Quantity<?> quantity, Range range) {
        if (quantity == null || range.contains(quantity.si())) {
            return true;
        }
        add(path, show(quantity), "out of bounds", range.text());
        return false;
    }

    public boolean range(String path, double value, Range range) {
        if (range.contains(value)) {
            return true;
        }
        add(path, value, "out of bounds", range.text());
        return false;
    }

    public int size() {
        return found.size();
    }

    public void throwIfAny() {
        if (!found.isEmpty()) {
            throw new UnsoundSetupException(found);
        }
    }

    /** The quantity as written, for people; cut to 34 digits. */
    public static String show(Quantity<?> quantity) {
        BigDecimal value = quantity.value();
        boolean readable = value.precision() <= MathContext.DECIMAL128.getPrecision();
        return (readable ? value : value.round(MathContext.DECIMAL128)) + " "
                + quantity.unit().symbol();
    }
}
