# Oracle values for org.twinbar.picture: prints the rows of checks.csv whose source is R.
# Run: Rscript core/src/test/R/picture.R
# Made with R 4.2.2. Standard uncertainties come from 4,000,000 draws of every place, rectangular over
# its step, through the plain formula, so that no derivative of ours is in them; they are known to 0.04 %
# (1/sqrt(2N)), and linearisation departs by less than 0.1 % at these sizes.
row <- function(id, quantity, inputs, expected, tolerance, source)
  cat(sprintf('%s,%s,%s,%.13g,%s,%s\n', id, quantity, inputs, expected, tolerance, source))
set.seed(6); N <- 4e6
near <- function(v, step) v + step * (runif(N) - 0.5)
mc <- "R 4.2.2 Monte Carlo"; cf <- "R 4.2.2"
# A (120, 340), B (961, 402), steps 2 and 3 px
l <- sqrt((near(961, 3) - near(120, 2))^2 + (near(402, 3) - near(340, 2))^2)
row("length", "length on the picture", "A 120/340; B 961/402", sqrt(841^2 + 62^2), "1e-9rel", cf)
row("length-u", "its standard uncertainty", "steps 2 and 3 px", sd(l), "2e-3rel", mc)
# height of P (700, 900) over A (100, 300), B (500, 350): the foot lies beyond B
h <- function(ax, ay, bx, by, px, py) abs((bx - ax) * (py - ay) - (by - ay) * (px - ax)) / sqrt((bx - ax)^2 + (by - ay)^2)
row("height", "height over a line", "A 100/300; B 500/350; P 700/900", h(100, 300, 500, 350, 700, 900), "1e-9rel", cf)
row("height-u", "its standard uncertainty", "steps 2 px; 1 px; 4 px",
    sd(h(near(100, 2), near(300, 2), near(500, 1), near(350, 1), near(700, 4), near(900, 4))), "2e-3rel", mc)
# angle at B (400, 400) between A (900, 420) and C (520, 100)
ang <- function(ax, ay, bx, by, cx, cy) {
  p <- complex(real = ax - bx, imaginary = ay - by); q <- complex(real = cx - bx, imaginary = cy - by)
  abs(Arg(p / q)) * 180 / pi }
row("angle", "angle", "A 900/420; B 400/400; C 520/100", ang(900, 420, 400, 400, 520, 100), "1e-9rel", cf)
row("angle-u", "its standard uncertainty", "steps 3 px; 5 px; 2 px",
    sd(ang(near(900, 3), near(420, 3), near(400, 5), near(400, 5), near(520, 2), near(100, 2))), "2e-3rel", mc)
# repeats
looks <- c(411.2, 409.7, 412.9, 410.4, 411.8)
row("repeats-mean", "mean of five looks", "411.2; 409.7; 412.9; 410.4; 411.8", mean(looks), "1e-10rel", cf)
row("repeats-sd", "operator's standard deviation", "the same", sd(looks), "1e-10rel", cf)
row("repeats-u", "standard uncertainty of the mean", "the same; one look 0.4 px", sd(looks) / sqrt(5), "1e-10rel", cf)
# scale: 50 mm known to 0.1 mm, between the two places of the length, tilted by up to 4 degrees, part up to 3 mm of 400 nearer
d <- 50 + rnorm(N, 0, 0.1)
view <- 1 + (1 - cos(4 * pi / 180)) * runif(N, -1, 1) + 3 / 400 * runif(N, -1, 1)
k <- d / l * view
row("scale", "what a pixel shows", "50 mm over the length", 50 / sqrt(841^2 + 62^2), "1e-9rel", cf)
row("scale-share", "its standard uncertainty as a share", "50 ± 0.1 mm; tilt 4°; 3 of 400 mm", sd(k) / mean(k), "2e-3rel", mc)
row("tilt", "share lost at 5 degrees", "1 - cos 5°", 1 - cos(5 * pi / 180), "1e-9rel", cf)
# a height on that scale
on <- k * h(near(100, 2), near(300, 2), near(500, 1), near(350, 1), near(700, 4), near(900, 4))
row("on-scale-u", "standard uncertainty of the height on the scale", "as above", sd(on), "2e-3rel", mc)
# film of 25 frames a second, clock seen at 2 s (10:00:00, steps of 1 s) and at 62 s (11:40:00): when was 40 s?
frame <- 1 / 25
f1 <- 2 + frame * (runif(N) - 0.5); f2 <- 62 + frame * (runif(N) - 0.5); f <- 40 + frame * (runif(N) - 0.5)
c1 <- 36000 + runif(N) - 0.5; c2 <- 42000 + runif(N) - 0.5
row("clock", "clock time at 40 s of film", "10:00:00 at 2 s; 11:40:00 at 62 s", 36000 + 38 / 60 * 6000, "1e-10rel", cf)
row("clock-u", "its standard uncertainty", "25 frames a second; clock steps of 1 s", sd(c1 + (f - f1) / (f2 - f1) * (c2 - c1)), "2e-3rel", mc)
# thermometer with steps of 0.5: 61.5 at 100 s, 64.0 at 160 s; at 118 s known to 1 s
t <- 118 + rnorm(N, 0, 1)
y1 <- near(61.5, 0.5); y2 <- near(64, 0.5)
row("between", "temperature between two readings", "61.5 at 100 s; 64.0 at 160 s; 118 s", approx(c(100, 160), c(61.5, 64), 118)$y, "1e-10rel", cf)
row("between-u", "its standard uncertainty", "steps of 0.5; time to 1 s", sd(y1 + (t - 100) / 60 * (y2 - y1)), "2e-3rel", mc)
