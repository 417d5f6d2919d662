package shaftwright.xlsx;

/**
 * A table of a sheet (CT_Table), whose name formulas may use.
 *
 * @param name as formulas spell it
 * @param reference its cells, headers included
 */
record TablePart(String name, String reference) {
    static TablePart read(PartText part) {
        String[] found = {"", ""};
        PartReader.walk(
                part,
                reader -> {
                    String name = reader.attribute("displayName");
                    String reference = reader.attribute("ref");
                    found[0] = name == null ? "" : name;
                    found[1] = reference == null ? "" : reference;
                    while (reader.nextChild()) {
                        reader.skip();
                    }
                });
        return new TablePart(found[0], found[1]);
    }
}
