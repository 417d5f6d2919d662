package shaftwright.contract;

/** Sheets on which a first verdict's cells are typed, under the names that a new workbook gives. */
public enum InputSheet {
    MEASURE("Measure"),
    PARTS("Parts"),
    SCENARIOS("Scenarios");

    private final String title;

    InputSheet(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
