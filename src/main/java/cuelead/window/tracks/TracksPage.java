package cuelead.window.tracks;

import cuelead.output.TrackFormat;
import cuelead.practice.Wish;
import cuelead.steer.Caution;
import cuelead.steer.Told;
import cuelead.time.Speed;
import cuelead.window.frame.Controls;
import cuelead.window.frame.FileChoice;
import cuelead.window.frame.Host;
import cuelead.window.frame.InHand;
import cuelead.window.frame.Page;
import cuelead.window.tracks.TracksChosen.Older;
import cuelead.window.tracks.TracksChosen.PacedFile;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** The page on which practice tracks are saved. Used on the thread of events. */
public final class TracksPage implements Page {
    private static final List<TrackFormat> FORMATS = List.of(TrackFormat.MP3, TrackFormat.FLAC, TrackFormat.WAV);

    private final Host host;
    private final JPanel page = new JPanel(new GridBagLayout());
    private final JLabel title = Controls.title(" ", 1.6);
    private final Map<Matter, JRadioButton> matters = new EnumMap<>(Matter.class);
    private final Paces paces = new Paces(this::refresh);
    private final JComboBox<String> format =
            new JComboBox<>(new String[] {"MP3 (small, for any player)", "FLAC (exact, half as large)", "WAV (exact)"});
    private final JTextField name = new JTextField(28);
    private final JLabel folderShown = new JLabel();
    private final JCheckBox replaces = new JCheckBox("Replace those that are there already");
    private final JTextArea files = Controls.sentences("The files that will be written");
    private final JButton save = Controls.button("Save", 'V', this::save);
    private Path folder = usualFolder();
    private String proposed = "";

    /** With the song with its calls, a bit slower than it is. */
    public TracksPage(Host host) {
        this.host = host;
        JComponent what = Controls.wrapped();
        ButtonGroup group = new ButtonGroup();
        for (Matter matter : Matter.values()) {
            JRadioButton button = new JRadioButton(matter.words());
            button.setMnemonic(matter.mnemonic());
            button.addActionListener(pressed -> refresh());
            group.add(button);
            matters.put(matter, button);
            what.add(button);
        }
        matters.get(Matter.SONG_AND_CALLS).setSelected(true);
        format.getAccessibleContext().setAccessibleName("The kind of file");
        TracksLately.in(host.means().kept()).ifPresent(lately -> {
            folder = lately.folder();
            format.setSelectedIndex(FORMATS.indexOf(lately.format()));
        });
        format.addActionListener(chosen -> refresh());
        name.getAccessibleContext().setAccessibleName("With what the names of the files begin");
        name.getDocument().addDocumentListener(new Typed());
        replaces.setMnemonic('R');
        replaces.addActionListener(pressed -> refresh());
        JButton otherFolder = Controls.button("Another folder\u2026", 'F', this::chooseFolder);
        files.setMargin(new Insets(8, 10, 8, 10));
        JScrollPane list = new JScrollPane(files);
        list.setPreferredSize(new Dimension(300, 96));
        place(0, title);
        place(1, "What", what);
        place(2, "How fast", paces.view());
        place(3, "Kind of file", Controls.wrapped(format));
        place(4, "Name", Controls.wrapped(name));
        place(5, "Folder", Controls.line(otherFolder, folderShown));
        placeGrowing(6, "To be written", list);
        place(7, "", replaces);
        place(8, "", Controls.line(save, new JLabel(Caution.OF_LICENCES)));
        page.setBorder(BorderFactory.createEmptyBorder(8, 12, 4, 16));
        host.inHand().listen(this::refresh);
        refresh();
    }

    private static Path usualFolder() {
        Path home = Path.of(System.getProperty("user.home", "."));
        Path music = home.resolve("Music");
        return Files.isDirectory(music) ? music : home;
    }

    private void place(int row, JComponent part) {
        page.add(part, constraints(row, 0, 2));
    }

    private void place(int row, String words, Component part) {
        page.add(new JLabel(words), constraints(row, 0, 1));
        page.add(part, constraints(row, 1, 1));
    }

    private void placeGrowing(int row, String words, Component part) {
        JPanel upper = new JPanel(new BorderLayout());
        upper.add(new JLabel(words), BorderLayout.NORTH);
        GridBagConstraints left = constraints(row, 0, 1);
        left.fill = GridBagConstraints.BOTH;
        page.add(upper, left);
        GridBagConstraints grown = constraints(row, 1, 1);
        grown.weighty = 1;
        grown.fill = GridBagConstraints.BOTH;
        page.add(part, grown);
    }

    private static GridBagConstraints constraints(int row, int column, int width) {
        GridBagConstraints place = new GridBagConstraints();
        place.gridy = row;
        place.gridx = column;
        place.gridwidth = width;
        place.weightx = column + width > 1 ? 1 : 0;
        place.fill = GridBagConstraints.HORIZONTAL;
        place.anchor = GridBagConstraints.LINE_START;
        place.insets = new Insets(6, 16, 6, 8);
        return place;
    }

    @Override
    public JComponent view() {
        return page;
    }

    @Override
    public void enter() {
        refresh();
    }

    private final class Typed implements DocumentListener {
        @Override
        public void insertUpdate(DocumentEvent typed) {
            show();
        }

        @Override
        public void removeUpdate(DocumentEvent deleted) {
            show();
        }

        @Override
        public void changedUpdate(DocumentEvent styled) {}
    }

    private void chooseFolder() {
        FileChoice.folder(page, "Where the tracks are put", folder, "Take this folder")
                .ifPresent(chosen -> {
                    folder = chosen;
                    refresh();
                });
    }

    /** The dance may be another one, and its song, too. */
    private void refresh() {
        InHand inHand = host.inHand();
        title.setText(inHand.isDance() ? "Practice tracks of " + inHand.title() : "There is no dance yet.");
        if (!proposed.equals(inHand.title())) {
            proposed = inHand.title();
            name.setText(proposed);
        }
        matters.forEach(
                (matter, button) -> button.setEnabled(inHand.isDance() && (inHand.hasSong() || !matter.needsSong())));
        if (inHand.isDance() && !matters.get(matter()).isEnabled()) {
            matters.get(Matter.CLICKS_AND_CALLS).setSelected(true);
        }
        show();
    }

    private Matter matter() {
        return matters.entrySet().stream()
                .filter(entry -> entry.getValue().isSelected())
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
    }

    private TracksChosen chosen() {
        return new TracksChosen(
                matter(),
                paces.chosen(),
                host.inHand().choices().clicks(),
                FORMATS.get(format.getSelectedIndex()),
                folder,
                name.getText(),
                replaces.isSelected() ? Older.IS_REPLACED : Older.STAYS);
    }

    private void show() {
        TracksChosen chosen = chosen();
        List<PacedFile> wanted = chosen.files();
        folderShown.setText(folder.toString());
        replaces.setEnabled(chosen.alreadyThere() > 0);
        save.setEnabled(host.inHand().isDance() && !wanted.isEmpty());
        save.setText(wanted.size() > 1 ? "Save " + wanted.size() + " files" : "Save");
        files.setText(wanted.isEmpty() ? "Nothing yet: choose how fast." : told(wanted));
        files.setCaretPosition(0);
    }

    private static String told(List<PacedFile> wanted) {
        return wanted.stream()
                .map(paced -> paced.file().getFileName()
                        + (Files.exists(paced.file()) ? "  (in place of the one that is there)" : ""))
                .collect(Collectors.joining("\n"));
    }

    private void save() {
        InHand inHand = host.inHand();
        inHand.sheet().filter(sheet -> inHand.isDance()).ifPresent(sheet -> {
            TracksChosen chosen = chosen();
            new TracksLately(chosen.folder(), chosen.format()).keep(host.means().kept());
            Wish wish = inHand.choices()
                    .wish(sheet, inHand.song(), chosen.matter().course())
                    .again()
                    .speed(Speed.ORIGINAL)
                    .wish();
            host.tell("");
            host.work(
                    "Making practice tracks",
                    new TracksWork(wish, host.means().places(), chosen, chosen.files()),
                    written -> saved(chosen.folder(), written));
        });
    }

    private void saved(Path where, List<Path> written) {
        replaces.setSelected(false);
        refresh();
        host.tell("Wrote " + Told.number(written.size(), "file") + " into " + where + ": "
                + written.stream()
                        .map(file -> String.valueOf(file.getFileName()))
                        .collect(Collectors.joining("; "))
                + ".");
    }
}
