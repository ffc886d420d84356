# Paper on a bench, by pixels: pictures of a sheet's two sides, as poppler draws them, are laid down,
# folded, nested and read, each page by a code of black cells on it. The steps are read off the
# folding's own file, as a maker would read them; nothing here is shared with the compiler.
#
# A pixel of the bench holds a pile of [face up, face down], the topmost last.
use strict; use warnings;

my $dpi = 24;

sub slurp { open my $f, '<:raw', $_[0] or die "$_[0]: $!\n"; local $/; <$f> }

# Rows of dark (1) and light (0).
sub picture {
  my $pgm = slurp(shift);
  $pgm =~ s/^P5\s+(\d+)\s+(\d+)\s+255\s//s or die "no picture\n";
  my ($w, $h) = ($1, $2);
  [map { my $y = $_; [map { ord(substr $pgm, $y * $w + $_, 1) < 128 ? 1 : 0 } 0 .. $w - 1] } 0 .. $h - 1];
}
sub mirrored { [map { [reverse @$_] } @{$_[0]}] }

# `up` lies on top; `under` is the other side as seen when the sheet is turned over sideways.
sub laid {
  my ($up, $under) = @_;
  my $down = mirrored($under);
  [map { my $y = $_; [map { [[$up->[$y][$_], $down->[$y][$_]]] } 0 .. $#{$up->[$y]}] } 0 .. $#$up];
}
sub turned_pile { [map { [$_->[1], $_->[0]] } reverse @{$_[0]}] }

# The left part of the bench, up to the crease, laid over the rest, or under it.
sub fold_left {
  my ($bench, $crease, $under) = @_;
  my @rows;
  for my $row (@$bench) {
    my @rest = @$row[$crease .. $#$row];
    for my $i (0 .. $crease - 1) {
      my $pile = turned_pile($row->[$crease - 1 - $i]);
      my $there = $rest[$i] // [];
      $rest[$i] = $under ? [@$pile, @$there] : [@$there, @$pile];
    }
    push @rows, \@rest;
  }
  \@rows;
}
sub flipped { my $b = shift; [map { [reverse @$_] } @$b] } # as a way of counting, not of turning
sub across { my $b = shift; my @r; for my $y (0 .. $#$b) { $r[$_][$y] = $b->[$y][$_] for 0 .. $#{$b->[$y]} } \@r }

# SIDE over|under …, at creases counted from the left and from the top.
sub fold_side {
  my ($bench, $side, $crease, $under) = @_;
  return fold_left($bench, $crease, $under) if $side eq 'left';
  return flipped(fold_left(flipped($bench), scalar(@{$bench->[0]}) - $crease, $under)) if $side eq 'right';
  my $turned = across($bench);
  return across(fold_left($turned, $crease, $under)) if $side eq 'top';
  return across(flipped(fold_left(flipped($turned), scalar(@{$turned->[0]}) - $crease, $under)));
}

sub top_view { [map { [map { @$_ ? $_->[-1][0] : 0 } @$_] } @{$_[0]}] }
# As seen when the whole is turned over sideways.
sub back_view { mirrored([map { [map { @$_ ? $_->[0][1] : 0 } @$_] } @{$_[0]}]) }
# Layer so many from the top: its upper face, or its lower as seen when it is turned like a leaf.
sub layer_up { my ($b, $k) = @_; [map { [map { @$_ > $k ? $_->[-1 - $k][0] : 0 } @$_] } @$b] }
sub layer_down { my ($b, $k) = @_; mirrored([map { [map { @$_ > $k ? $_->[-1 - $k][1] : 0 } @$_] } @$b]) }
sub layers { my $most = 0; for my $row (@{$_[0]}) { for (@$row) { $most = @$_ if @$_ > $most } } $most }

# The codes of a picture in reading order: a bar at the head, two rows of four bits, and at the foot a
# cell on the left alone, so that a code that is turned or mirrored is not read.
sub codes {
  my $picture = shift;
  my (@numbers, @box);
  my $w = @{$picture->[0]};
  my @column = map { my $x = $_; scalar grep { $_->[$x] } @$picture } 0 .. $w - 1;
  for my $x (0 .. $w) {
    if ($x < $w && $column[$x]) { @box = ($x, $x) unless @box; $box[1] = $x; next; }
    next unless @box;
    push @numbers, code_in($picture, @box);
    @box = ();
  }
  @numbers;
}
sub code_in {
  my ($picture, $left, $right) = @_;
  my @rows = grep { my $y = $_; grep { $picture->[$y][$_] } $left .. $right } 0 .. $#$picture;
  my ($top, $foot) = @rows[0, -1];
  my @cell;
  for my $j (0 .. 3) {
    for my $i (0 .. 3) {
      my $x = int($left + ($i + 0.5) * ($right - $left + 1) / 4);
      my $y = int($top + ($j + 0.5) * ($foot - $top + 1) / 4);
      $cell[$j] .= $picture->[$y][$x];
    }
  }
  $cell[0] eq '1111' && $cell[3] eq '1000' or die "a page does not stand head up: @cell\n";
  oct "0b$cell[1]$cell[2]";
}

# What a reader of the folding's file takes from it.
sub folding {
  my $text = slurp(shift);
  my $words = join ' ', $text =~ /^# (.*)$/mg;
  my %f = (inside_up => $words =~ /inside up/ ? 1 : 0, steps => [], narrow => {}, cuts => []);
  for (split /\n/, $text) {
    next if /^#/;
    $f{panels} = [$1, $2] if /^ +panels +(\d+) by (\d+)/;
    $f{widths} = [split /, */, $1] if /^ +widths +(.*)/;
    $f{narrow}{$1} = $2 / $3 if /^ +narrow +column (\d+) by (\d+)\/(\d+)in/;
    $f{tab} = $1 / $2 if /^ +tab +(\d+)\/(\d+)in at right/;
    $f{spine} = $1 if /^ +spine +(\w+)/;
    $f{push} = 1 if /^ +push +ends together/;
    $f{nest} = $1 if /^ +nest +(.*)/;
    push @{$f{cuts}}, [$1, $2, $3] if /^ +cut +between rows (\d+) and \d+, columns (\d+) to (\d+)/;
    push @{$f{steps}}, $1 if /^ +fold +(.*)/;
  }
  \%f;
}

# Where the creases between columns lie, in inches from the left.
sub creases {
  my ($f, $width) = @_;
  $width -= $f->{tab} // 0;
  my @shares = $f->{widths} ? @{$f->{widths}} : (1) x $f->{panels}[0];
  my ($all, $less) = (0, 0);
  $all += $_ for @shares;
  $less += $_ for values %{$f->{narrow}};
  my ($at, @at) = (0, 0);
  for my $i (0 .. $#shares) {
    $at += ($width + $less) / $all * $shares[$i] - ($f->{narrow}{$i + 1} // 0);
    push @at, $at;
  }
  @at;
}

# Folds over lines; every stage of the bench, the flat one first.
sub fold_over_lines {
  my ($f, $bench) = @_;
  my ($w, $h) = (scalar @{$bench->[0]}, scalar @$bench);
  my @x = map { int($_ * $dpi + 0.5) } creases($f, $w / $dpi);
  my @y = map { $_ * $h / $f->{panels}[1] } 0 .. $f->{panels}[1];
  my @stages = ($bench);
  for my $step (@{$f->{steps}}) {
    $step =~ /^(left|right|top|bottom) (over|under) \w+(?:, (\d) panel)?$/ or die "what is `$step`?\n";
    my ($side, $under, $panels) = ($1, $2 eq 'under', $3);
    my $lines = $side =~ /left|right/ ? \@x : \@y;
    $panels //= $#$lines / 2;
    my $first = $side eq 'left' || $side eq 'top';
    my $crease = $lines->[$first ? $panels : -1 - $panels];
    push @stages, fold_side($stages[-1], $side, $crease - $lines->[0], $under);
    splice @$lines, $first ? 0 : -$panels, $panels;
  }
  @stages;
}

# A leaf after another, each read on both its faces; paper with nothing on it is passed over.
sub leaves {
  my $bench = shift;
  my @pages = map { [codes(layer_up($bench, $_)), codes(layer_down($bench, $_))] } 0 .. layers($bench) - 1;
}

# What each opening newly shows from left to right, then the back. Two doors that do not lie on each
# other are opened at once.
sub by_opening {
  my (%seen, @pages);
  my $see = sub { push @pages, grep { !$seen{$_}++ } @_ };
  for my $i (reverse 0 .. $#_) {
    $see->(codes(top_view($_[$i]))) unless $i && $i < $#_ && layers($_[$i]) == layers($_[$i + 1]);
  }
  $see->(codes(back_view($_[0])));
  @pages;
}

sub piece_of { my ($bench, $x, $y, $w, $h) = @_; [map { [@{$bench->[$_]}[$x .. $x + $w - 1]] } $y .. $y + $h - 1] }

# A strip of panels, in its own order, folded back and forth under the one that it starts from.
sub zigzag {
  my @panels = @_; # [bench, whether the joint to the one before is upright]
  my ($fx, $fy, @pile) = (0, 0);
  for (@panels) {
    my ($panel, $upright) = @$_;
    if (@pile) { $upright ? ($fx ^= 1) : ($fy ^= 1) }
    my $laid = $fx ? flipped($panel) : $panel;
    $laid = [reverse @$laid] if $fy;
    $laid = [map { [map { turned_pile($_) } @$_] } @$laid] if $fx ^ $fy;
    unshift @pile, $laid;
  }
  my ($w, $h) = (scalar @{$pile[0][0]}, scalar @{$pile[0]});
  [map { my $y = $_; [map { my $x = $_; [map { @{$_->[$y][$x] // []} } @pile] } 0 .. $w - 1] } 0 .. $h - 1];
}

# From the top left panel along what the slits leave joined.
sub strip {
  my ($f, $bench) = @_;
  my ($columns, $rows) = @{$f->{panels}};
  my ($w, $h) = (@{$bench->[0]} / $columns, @$bench / $rows);
  my ($c, $r, $by, @strip, %been) = (0, 0, 1);
  while (1) {
    $been{"$c $r"} = 1;
    push @strip, [piece_of($bench, $c * $w, $r * $h, $w, $h), $by];
    my $slit = grep { $_->[0] == $r + 1 && $_->[1] <= $c + 1 && $c + 1 <= $_->[2] } @{$f->{cuts}};
    my ($next) = grep { $_ >= 0 && $_ < $columns && !$been{"$_ $r"} } $c + 1, $c - 1;
    if (defined $next) { $c = $next; $by = 1; }
    elsif (!$slit && $r + 1 < $rows) { $r++; $by = 0; }
    else { last }
  }
  @strip;
}

# A sheet that is slit along its middle and folded along it, pushed together from its ends: the four
# double leaves stand round the middle like a cross, and are read round it from the cover on.
sub round_the_cross {
  my ($f, $bench) = @_;
  my $w = @{$bench->[0]} / $f->{panels}[0];
  my @front = map { codes(layer_up(piece_of($bench, $_ * $w, 0, $w, scalar @$bench), 0)) } 0 .. 3;
  my @behind = map { codes(layer_down(piece_of($bench, $_ * $w, 0, $w, scalar @$bench), 1)) } 0 .. 3;
  my @ring = (@front, reverse @behind);
  push @ring, shift @ring while $ring[0] != 1;
  @ring;
}

sub glued_strip {
  my ($f, @benches) = @_;
  my $keep = @{$benches[0][0]} - $f->{tab} * $dpi;
  my @rows;
  for my $bench (@benches) {
    push @{$rows[$_]}, @{$bench->[$_]}[0 .. $keep - 1] for 0 .. $#$bench;
  }
  (\@rows, $keep / $f->{panels}[0]);
}

sub nested {
  my @sheets = @_; # leaves of each, the outermost first
  my (@before, @after);
  for my $leaves (@sheets) {
    my $half = @$leaves / 2;
    push @before, @$leaves[0 .. $half - 1];
    unshift @after, @$leaves[$half .. $#$leaves];
  }
  map { @$_ } @before, @after;
}

sub read_copy {
  my ($f, @benches) = @_; # of the sheets, as laid down
  my $steps = join '; ', @{$f->{steps}};
  if ($f->{tab}) {
    my ($strip, $w) = glued_strip($f, @benches);
    my @panels = map { [piece_of($strip, $_ * $w, 0, $w, scalar @$strip), 1] } 0 .. @{$strip->[0]} / $w - 1;
    return by_opening($strip, zigzag(@panels));
  }
  if ($steps =~ /^back and forth$/) {
    my $w = @{$benches[0][0]} / $f->{panels}[0];
    my @panels = map { [piece_of($benches[0], $_ * $w, 0, $w, scalar @{$benches[0]}), 1] } 0 .. $f->{panels}[0] - 1;
    return by_opening($benches[0], zigzag(@panels));
  }
  if ($steps =~ /^back and forth, from panel 2; left under right, 1 panel$/) {
    my ($back_cover, @strip) = strip($f, $benches[0]);
    return ((map { @$_ } leaves(zigzag(@strip))), codes(top_view($back_cover->[0])));
  }
  my @stages = map { [fold_over_lines($f, $_)] } @benches;
  return round_the_cross($f, $stages[0][-1]) if $f->{push};
  return by_opening(@{$stages[0]}) if !$f->{nest} && $f->{panels}[0] > 2 && $f->{panels}[1] == 1;
  my @sheets = map { [leaves($_->[-1])] } @stages;
  my $nest = $f->{nest} // 'one after another';
  return map { map { @$_ } @$_ } @sheets if $nest eq 'one after another';
  my $some = $nest =~ /, (\d+) a section/ ? $1 : $nest =~ /back to back/ ? @sheets / 2 : @sheets;
  my @pages;
  push @pages, nested(splice @sheets, 0, $some) while @sheets;
  @pages;
}

sub in_order { my @wanted = 1 .. shift; "@_" eq "@wanted" or die "read in the order @_\n" }

1;
