package shaftwright.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.GridLayout;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.ButtonGroup;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.filechooser.FileNameExtensionFilter;
import shaftwright.jobs.BookVariants;
import shaftwright.jobs.PlainText;
import shaftwright.jobs.TakeJob;
import shaftwright.jobs.TakenFile;
import shaftwright.jobs.Variant;
import shaftwright.units.LengthUnit;

/** What the builder is asked before a job begins. */
final class Questions {
    /** A workbook that is to be made. */
    record Made(Path file, LengthUnit unit) {}

    private static final String BACKUP_KEPT =
            " is there already. Replace it? It is kept as a backup.";
    private static final int ROWS = 18;
    private static final int COLUMNS = 80;

    private final JFrame frame;

    /** Where files were last chosen. */
    private File folder = new File(".").getAbsoluteFile().getParentFile();

    Questions(JFrame frame) {
        this.frame = frame;
    }

    List<Path> workbooks() {
        JFileChooser chooser = chooser("Workbooks (.xlsx, .xlsm)", "xlsx", "xlsm");
        chooser.setMultiSelectionEnabled(true);
        if (chooser.showOpenDialog(frame) != JFileChooser.APPROVE_OPTION) {
            return List.of();
        }
        folder = chooser.getCurrentDirectory();
        List<Path> chosen = new ArrayList<>();
        for (File file : chooser.getSelectedFiles()) {
            chosen.add(file.toPath());
        }
        return chosen;
    }

    Optional<Made> made() {
        JRadioButton inch = new JRadioButton("inch", true);
        JRadioButton millimetre = new JRadioButton("mm");
        inch.setMnemonic('i');
        millimetre.setMnemonic('m');
        ButtonGroup group = new ButtonGroup();
        group.add(inch);
        group.add(millimetre);
        JPanel units = new JPanel(new GridLayout(0, 1));
        units.add(new JLabel("Unit of bare numbers and results:"));
        units.add(inch);
        units.add(millimetre);
        JFileChooser chooser = chooser("Workbooks (.xlsx)", "xlsx");
        chooser.setAccessory(units);
        chooser.setSelectedFile(new File(folder, "shafts.xlsx"));
        return target(chooser, "xlsx", true)
                .map(
                        file ->
                                new Made(
                                        file,
                                        inch.isSelected()
                                                ? LengthUnit.INCH
                                                : LengthUnit.MILLIMETRE));
    }

    Optional<Path> comparison(Path first) {
        JFileChooser chooser = chooser("Workbooks (.xlsx)", "xlsx");
        chooser.setSelectedFile(beside(first, "comparison.xlsx"));
        return target(chooser, "xlsx", true);
    }

    Optional<Path> pdf(Path file) {
        JFileChooser chooser = chooser("PDF (.pdf)", "pdf");
        String name = file.getFileName().toString().replaceFirst("\\.[^.]*$", "");
        chooser.setSelectedFile(beside(file, name + " cards.pdf"));
        return target(chooser, "pdf", false);
    }

    private static File beside(Path file, String name) {
        return file.toAbsolutePath().resolveSibling(name).toFile();
    }

    private JFileChooser chooser(String what, String... endings) {
        JFileChooser chooser = new JFileChooser(folder);
        chooser.setFileFilter(new FileNameExtensionFilter(what, endings));
        return chooser;
    }

    /** A file to be written, with its ending; what is there is replaced only when that is meant. */
    private Optional<Path> target(JFileChooser chooser, String ending, boolean kept) {
        if (chooser.showSaveDialog(frame) != JFileChooser.APPROVE_OPTION) {
            return Optional.empty();
        }
        folder = chooser.getCurrentDirectory();
        Path file = chooser.getSelectedFile().toPath();
        if (!file.toString().toLowerCase(Locale.ROOT).endsWith("." + ending)) {
            file = file.resolveSibling(file.getFileName() + "." + ending);
        }
        String name = PlainText.shown(file.getFileName().toString(), false);
        return !Files.exists(file)
                        || agreed(name + (kept ? BACKUP_KEPT : " is there already. Replace it?"))
                ? Optional.of(file)
                : Optional.empty();
    }

    private boolean agreed(Object question) {
        return JOptionPane.showConfirmDialog(
                        frame, question, MainWindow.TITLE, JOptionPane.OK_CANCEL_OPTION)
                == JOptionPane.OK_OPTION;
    }

    /** Names of the sheets that are to be seen. */
    Optional<Set<String>> sheets(Map<String, Boolean> seen) {
        JPanel list = new JPanel(new GridLayout(0, 1));
        List<JCheckBox> boxes = new ArrayList<>();
        seen.forEach(
                (name, shown) -> {
                    JCheckBox box = new JCheckBox(PlainText.shown(name, false), shown);
                    box.putClientProperty("html.disable", true);
                    box.setName(name);
                    boxes.add(box);
                    list.add(box);
                });
        JScrollPane scroll = new JScrollPane(list);
        scroll.setPreferredSize(UIScale.scale(new Dimension(320, 400)));
        if (!agreed(new Object[] {"Sheets that are seen as tabs:", scroll})) {
            return Optional.empty();
        }
        Set<String> wanted = new LinkedHashSet<>();
        for (JCheckBox box : boxes) {
            if (box.isSelected()) {
                wanted.add(box.getName());
            }
        }
        return Optional.of(wanted);
    }

    /** Which variant goes where. */
    Optional<TakeJob> taking(List<LookedAt> open) {
        JComboBox<Offer> variants = new JComboBox<>();
        JComboBox<String> targets = new JComboBox<>();
        for (LookedAt each : open) {
            targets.addItem(PlainText.shown(each.file().getFileName().toString(), false));
            for (BookVariants book : each.books()) {
                book.variants().forEach(one -> variants.addItem(new Offer(each.file(), one)));
            }
        }
        targets.setSelectedIndex(targets.getItemCount() - 1);
        Object[] asked = {
            label("Take the variant", 'v', variants),
            variants,
            label("into an empty column of", 'i', targets),
            targets
        };
        if (variants.getItemCount() == 0 || !agreed(asked)) {
            return Optional.empty();
        }
        Offer offer = (Offer) variants.getSelectedItem();
        return Optional.of(
                new TakeJob(
                        offer.file(),
                        offer.variant().number(),
                        open.get(targets.getSelectedIndex()).file(),
                        Optional.empty()));
    }

    private static JLabel label(String text, char mnemonic, JComponent of) {
        JLabel label = new JLabel(text);
        label.setDisplayedMnemonic(mnemonic);
        label.setLabelFor(of);
        of.putClientProperty("html.disable", true);
        return label;
    }

    /** A variant that may be taken. */
    private record Offer(Path file, Variant variant) {
        @Override
        public String toString() {
            return PlainText.shown(file.getFileName() + ", " + variant.title(), false);
        }
    }

    /** Whether what was thought out is wanted. */
    boolean agreed(String preview, TakenFile taken) {
        JTextArea text = new JTextArea(preview, ROWS, COLUMNS);
        text.setEditable(false);
        text.setLineWrap(true);
        text.setWrapStyleWord(true);
        text.getAccessibleContext().setAccessibleName("What would come of it");
        return agreed(new Object[] {new JScrollPane(text), taken.question().orElse("Take it?")});
    }
}
