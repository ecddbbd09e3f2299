package org.twinbar.study;

import java.time.ZonedDateTime;
import java.util.UUID;

/**
 * A recipe or a material of a workspace.
 *
 * @param changed when it was last written down
 */
public record KeptRecipe(UUID id, RecipeSheet sheet, ZonedDateTime changed) {}
