package brightseam.weld;

import java.util.Optional;

/**
 * Something that can be seen on a joint besides its colour.
 *
 * @param key its name in records
 * @param name what it is called
 * @param ruling what it leads to: {@code CONDITIONAL} where a size decides, which the drawing or the shop's
 *     specification names
 * @param forgivable whether a disposition may let it stay; never for a crack in the base metal
 * @param next what comes next
 * @param source where that comes from, in words
 */
public record FindingKind(String key, String name, Ruling ruling, boolean forgivable, Optional<String> next,
        String source) {}
