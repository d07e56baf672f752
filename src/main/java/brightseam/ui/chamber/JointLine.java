package brightseam.ui.chamber;

/**
 * One joint of the list.
 *
 * @param number its number on the map, such as {@code J03}
 * @param words what it joins
 * @param state how far it has come, in words
 * @param mark the same as a shape
 * @param path where its screen is
 */
record JointLine(String number, String words, String state, brightseam.ui.parts.Mark.Kind mark, String path) {}
