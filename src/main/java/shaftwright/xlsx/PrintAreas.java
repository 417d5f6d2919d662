package shaftwright.xlsx;

import java.util.ArrayList;
import java.util.List;

/** The names by which sheets say what of them is printed. */
final class PrintAreas {
    private static final String NAME = "_xlnm.Print_Area";

    private PrintAreas() {}

    /** Changes of the workbook part that take all of them out. */
    static List<Splice> removed(PartText workbook) {
        List<Splice> splices = new ArrayList<>();
        PartReader.walk(
                workbook,
                reader -> {
                    while (reader.nextChild()) {
                        if (reader.name().equals("definedNames")) {
                            remove(reader, splices);
                        } else {
                            reader.skip();
                        }
                    }
                });
        return splices;
    }

    private static void remove(PartReader reader, List<Splice> splices) {
        while (reader.nextChild()) {
            int start = reader.start();
            boolean area = NAME.equalsIgnoreCase(reader.attribute("name"));
            reader.skip();
            if (area) {
                splices.add(new Splice(start, reader.end(), ""));
            }
        }
    }
}
