package org.twinbar.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The table of units, and the reading of compound ones.
 *
 * <p>Factors are those of the SI brochure (9th edition, tables 1 to 8) and of NIST SP 811 (2008),
 * appendix B.8, for the inch, pound-force, psi and foot-pound-force; the standard acceleration of
 * free fall is 9.80665 m/s².
 */
final class Units {

    private static final Map<String, Unit> BY_NAME = new HashMap<>();

    private Units() {}

    static {
        add(Unit.ONE, "1", "none", "-", "–");
        add(Unit.PERCENT, "pct");
        unit("GU", "GU", Dimension.NONE, "1");
        unit("HD", "HD", Dimension.NONE, "1", "shore_d", "shored");

        unit("m", "m", Dimension.LENGTH, "1");
        unit("mm", "mm", Dimension.LENGTH, "0.001");
        unit("cm", "cm", Dimension.LENGTH, "0.01");
        unit("µm", "um", Dimension.LENGTH, "0.000001", "μm", "micron");
        unit("in", "in", Dimension.LENGTH, "0.0254", "inch", "\"");
        unit("ft", "ft", Dimension.LENGTH, "0.3048");

        unit("kg", "kg", Dimension.MASS, "1");
        unit("g", "g", Dimension.MASS, "0.001");
        unit("mg", "mg", Dimension.MASS, "0.000001");
        unit("lb", "lb", Dimension.MASS, "0.45359237");
        unit("oz", "oz", Dimension.MASS, "0.028349523125");

        unit("s", "s", Dimension.TIME, "1", "sec", "seconds");
        unit("ms", "ms", Dimension.TIME, "0.001");
        unit("min", "min", Dimension.TIME, "60", "minutes");
        unit("h", "h", Dimension.TIME, "3600", "hr", "hours");
        unit("d", "d", Dimension.TIME, "86400", "day", "days");

        unit("K", "K", Dimension.TEMPERATURE, "1");
        temperature("°C", "C", BigDecimal.ONE, new BigDecimal("273.15"), "degC", "℃");
        BigDecimal fahrenheit = new BigDecimal(5).divide(new BigDecimal(9), MathContext.DECIMAL128);
        temperature(
                "°F",
                "F",
                fahrenheit,
                new BigDecimal("273.15").subtract(new BigDecimal(32).multiply(fahrenheit)),
                "degF",
                "℉");

        unit("rad", "rad", Dimension.ANGLE, "1");
        unit("°", "deg", Dimension.ANGLE, "0.017453292519943295769", "degree", "degrees");

        unit("N", "N", Dimension.FORCE, "1");
        unit("mN", "mN", Dimension.FORCE, "0.001");
        unit("kN", "kN", Dimension.FORCE, "1000");
        unit("kgf", "kgf", Dimension.FORCE, "9.80665", "kp");
        unit("gf", "gf", Dimension.FORCE, "0.00980665");
        unit("lbf", "lbf", Dimension.FORCE, "4.4482216152605");

        unit("Pa", "Pa", Dimension.PRESSURE, "1");
        unit("hPa", "hPa", Dimension.PRESSURE, "100", "mbar");
        unit("kPa", "kPa", Dimension.PRESSURE, "1000");
        unit("MPa", "MPa", Dimension.PRESSURE, "1000000");
        unit("GPa", "GPa", Dimension.PRESSURE, "1000000000");
        unit("bar", "bar", Dimension.PRESSURE, "100000");
        unit("psi", "psi", Dimension.PRESSURE, "6894.757293168361336722673445346890");

        unit("J", "J", Dimension.ENERGY, "1");
        unit("mJ", "mJ", Dimension.ENERGY, "0.001");
        unit("kJ", "kJ", Dimension.ENERGY, "1000");
        unit("N·m", "Nm", Dimension.ENERGY, "1");
        unit("N·mm", "Nmm", Dimension.ENERGY, "0.001");
        unit("N·cm", "Ncm", Dimension.ENERGY, "0.01");
        unit(
                "ft·lbf",
                "ft_lbf",
                Dimension.ENERGY,
                "1.3558179483314004",
                "ftlbf",
                "ft_lb",
                "ft-lbf",
                "ft·lb",
                "ft-lb");

        unit("L", "L", Dimension.LENGTH.power(3), "0.001", "l");
        unit("mL", "mL", Dimension.LENGTH.power(3), "0.000001", "ml");
        unit("Hz", "Hz", Dimension.TIME.power(-1), "1");
    }

    private static void unit(
            String symbol, String code, Dimension dimension, String factor, String... others) {
        add(new Unit(symbol, code, dimension, new BigDecimal(factor), BigDecimal.ZERO), others);
    }

    private static void temperature(
            String symbol, String code, BigDecimal factor, BigDecimal offset, String... others) {
        add(new Unit(symbol, code, Dimension.TEMPERATURE, factor, offset), others);
    }

    private static void add(Unit unit, String... others) {
        BY_NAME.put(unit.symbol(), unit);
        BY_NAME.put(unit.code(), unit);
        for (String other : others) {
            BY_NAME.put(other, unit);
        }
    }

    static Optional<Unit> find(String text) {
        String name = text.strip();
        Unit simple = BY_NAME.get(name);
        if (simple != null) {
            return Optional.of(simple);
        }
        return name.isEmpty() ? Optional.empty() : compound(name);
    }

    /** Reads {@code a·b/c·d}: everything behind the stroke, or behind "per", divides. */
    private static Optional<Unit> compound(String name) {
        String plain = (name.startsWith("per_") ? "1/" + name.substring(4) : name)
                .replace("_per_", "/")
                .replace(" per ", "/")
                .replace('*', '·')
                .replace('⋅', '·')
                .replace("(", "")
                .replace(")", "");
        List<Factor> factors = new ArrayList<>();
        String[] parts = plain.split("/", -1);
        for (int part = 0; part < parts.length; part++) {
            // A one is a unit's numerator (1/K), and never a factor: in width_1_mm it counts.
            if (part == 0 && parts.length > 1 && parts[0].equals("1")) {
                factors.add(new Factor(Unit.ONE, 1));
                continue;
            }
            for (String word : parts[part].split("[·_ ]", -1)) {
                Optional<Factor> factor = Factor.parse(word, part == 0 ? 1 : -1);
                if (factor.isEmpty()) {
                    return Optional.empty();
                }
                factors.add(factor.get());
            }
        }
        return Optional.of(product(factors));
    }

    private static Unit product(List<Factor> factors) {
        Dimension dimension = Dimension.NONE;
        BigDecimal size = BigDecimal.ONE;
        StringBuilder symbol = new StringBuilder();
        StringBuilder code = new StringBuilder();
        for (Factor factor : factors) {
            dimension = dimension.times(factor.unit().dimension().power(factor.power()));
            size = factor.power() > 0
                    ? size.multiply(factor.unit().factor().pow(factor.power()))
                    : size.divide(
                            factor.unit().factor().pow(-factor.power()), MathContext.DECIMAL128);
            boolean divides = factor.power() < 0;
            boolean first = symbol.isEmpty();
            symbol.append(divides ? (first ? "1/" : "/") : (first ? "" : "·"))
                    .append(factor.symbol());
            code.append(divides ? (first ? "per_" : "_per_") : (first ? "" : "_"))
                    .append(factor.code());
        }
        return new Unit(symbol.toString(), code.toString(), dimension, size, BigDecimal.ZERO);
    }

    /** One unit raised to a power; in a compound, °C means a difference of temperature. */
    private record Factor(Unit unit, int power) {

        static Optional<Factor> parse(String word, int sign) {
            if (BY_NAME.get(word) == Unit.ONE) {
                return Optional.empty();
            }
            String base = word.replace("^", "").replace('²', '2').replace('³', '3');
            int power = 1;
            if (base.length() > 1 && (base.endsWith("2") || base.endsWith("3"))) {
                power = base.charAt(base.length() - 1) - '0';
                base = base.substring(0, base.length() - 1);
            }
            Unit unit = BY_NAME.get(base);
            return unit == null || base.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Factor(unit, sign * power));
        }

        String symbol() {
            int size = Math.abs(power);
            return unit.symbol() + (size == 2 ? "²" : size == 3 ? "³" : "");
        }

        String code() {
            int size = Math.abs(power);
            return unit.code() + (size == 1 ? "" : String.valueOf(size));
        }
    }
}
