#include "problems/families.hpp"

namespace bodkin {
namespace {

constexpr Check table[] = {
    {"glued-by-hand", Kind::note, "Something is glued on this page's original",
     "A paste-up is not in any file: a ticket stub, a pressed leaf, a strip of typing is cut out "
     "and glued on the page's black original, and the copier takes it along. Until then the page "
     "is not whole, so its side is copied from its original and not printed from the passes. The "
     "window's outline and its words are pale blue, which copiers do not see; thick or raised "
     "pieces throw a shadow on the glass, and wet glue stays on it.",
     "Nothing needs mending. Print originals.pdf at 100 %, glue, let it dry, and lay the sheets on "
     "the glass in their order. Where your machine does see the blue, give it a paler one.",
     "page 5\n"
     "  paste-up \"ticket stub, glued by hand on the original\"\n"
     "    at       1in 3in, 3.5in x 4in\n"},
    {"coarse-picture", Kind::warning, "A picture has too few dots for its size",
     "A picture is a grid of dots. Stretched over more paper, each dot grows: under 200 to the "
     "inch a photograph looks soft, under 100 one sees squares, and drawings in pure black and "
     "white want 400 or more. Pictures that came through a messaging program have usually lost "
     "most of theirs on the way. Under 100 it is an error, else a warning.",
     "Print it smaller (the message says how small), get the camera's own file, or make the "
     "coarseness the look of the page.",
     "picture \"art/dog.jpg\"\n"
     "  at       1in 1in, 1.8in x 1.4in\n"},
    {"missing-file", Kind::error, "A file is not there",
     "The line names a file that the folder does not hold. Most often it was renamed, has "
     "another ending than it looks, or lies in another folder. The page is drawn all the same, "
     "with a dashed outline where the picture belongs, so that you can go on.",
     "Correct the name, or copy the file to where the line says. Names count from the folder "
     "of the file that names them.",
     "picture \"art/umbrella.png\"\n"},
    {"no-description", Kind::note, "A picture has no description",
     "A description says in a sentence what the picture shows, for those who read the booklet "
     "by ear, and for whoever opens the file in ten years. It is not printed.",
     "Add one, as you would tell it on the telephone.",
     "picture \"art/shelter.png\"\n"
     "  describe \"A lit bus shelter on an empty road\"\n"},
    {"outside-the-folder", Kind::error, "A file lies outside the edition's folder",
     "An edition reads only what lies in its own folder, or in the folder of its series. Then "
     "the folder can be copied to another desk and still works, and a manuscript from a "
     "stranger cannot read files of yours. Links that lead out of the folder count as outside.",
     "Copy the file into the folder and name it there.", "picture \"art/colander.png\"\n"},
    {"picture-too-big", Kind::error, "A picture is too big to open",
     "The file says that it has more dots than a sheet of any size could show, or needs more "
     "memory or time than a copy shop's machine has. A broken or malicious file can claim this "
     "too, so the compiler asks before it believes it.",
     "Save it smaller: 600 dots to the inch at the size that it prints is more than any copier "
     "shows.",
     "picture \"art/map-small.png\"\n"},
    {"too-long-file", Kind::error, "A file is longer than any edition",
     "Manuscripts and texts are a few thousand lines at the most. This file is so long that "
     "something else must have got into its place: a recording, a disk image, a log. Reading "
     "it would only make you wait.",
     "Look whether the name is the right one.", "text mender from \"words/mender.md\"\n"},
    {"unreadable-picture", Kind::error, "A file is not a picture that can be read",
     "The file is there, but what is in it is no picture: it is empty or broken off, or it is "
     "another kind of file with a picture's ending. PNG, JPEG, TIFF, WebP, HEIC, SVG and a "
     "page of a PDF can be read.",
     "Open it in the program that made it and save it again, as PNG for drawings and JPEG for "
     "photographs.",
     "picture \"art/moon.png\"\n"},
    {"wrong-case", Kind::error, "A file's name differs in capitals",
     "On some computers Moon.PNG and moon.png are one file, on others they are two. An edition "
     "that works on your desk would then fail on a friend's. So the name must be typed exactly "
     "as the folder shows it.",
     "Type the name as it stands in the folder.", "picture \"art/Moon.PNG\"\n"},
};

} // namespace

std::span<const Check> checks_of_pictures() { return table; }

} // namespace bodkin
