# Oracle values for org.twinbar.decision: chance of "supported" for rates and ranks before anything is measured.
# Every order of n and n is listed with combn and weighed by Lehmann's product; larger n are simulated.
# Prints rows of checks.csv. Run: Rscript core/src/test/R/orders.R
# Made with R 4.2.2 and survival 3.5 (coxph's score test at the ratio worth having; wilcox.test, exact).
suppressMessages(library(survival))
src <- paste0("R ", getRversion(), " core/src/test/R/orders.R")
row <- function(id, inputs, expected, tolerance, how)
  cat(sprintf('%s,chance of supported,"%s",%.12g,%s,"%s: %s"\n', id, inputs, expected, tolerance, src, how))
# Score of Cox's partial likelihood below -z at the ratio worth having: the ratio is shown to be lower.
lower <- function(time, event, g, worth) {
  if (!any(event == 1)) return(FALSE)
  m <- suppressWarnings(coxph(Surv(time, event) ~ g, init = log(worth), control = coxph.control(iter.max = 0)))
  o <- order(time); u <- 0; gs <- g[o]; es <- event[o]; n <- length(o)
  for (i in seq_len(n)) if (es[i] == 1) {
    a <- sum(gs[i:n]); b <- n - i + 1 - a
    if (a > 0 && b > 0) u <- u + gs[i] - worth * a / (worth * a + b)
  }
  isTRUE(m$score > qnorm(.975)^2 && u < 0)
}
# Brunner-Munzel's interval above the chance worth having, held at a half by the exact test of ranks.
above <- function(x, y, worth) {
  m <- length(x); n <- length(y)
  if (wilcox.test(x, y, exact = TRUE)$p.value > .05) return(FALSE)
  r <- rank(c(x, y)); p <- (mean(r[1:m]) - (m + 1) / 2) / n
  v <- function(x, y) { r <- rank(c(x, y))[seq_along(x)]; var(r - rank(x)) / length(x) / length(y)^2 }
  a <- v(x, y); b <- v(y, x)
  if (a + b == 0) {
    xs <- sort(x); ys <- sort(y)
    if (p == 1) { k <- xs[1]; xs[1] <- ys[n]; ys[n] <- k } else { k <- xs[m]; xs[m] <- ys[1]; ys[1] <- k }
    a <- v(xs, ys); b <- v(ys, xs)
  }
  df <- (a + b)^2 / (a^2 / (m - 1) + b^2 / (n - 1))
  low <- p - qt(.975, df) * sqrt(a + b)
  if (worth > .5) low >= worth else low > .5
}
listed <- function(n, theta, ok) sum(combn(2 * n, n, function(first) {
  g <- as.integer(seq_len(2 * n) %in% first); a <- n; b <- n; chance <- 1
  for (one in g) { q <- theta * a / (theta * a + b); if (one) { chance <- chance * q; a <- a - 1 } else { chance <- chance * (1 - q); b <- b - 1 } }
  if (ok(g)) chance else 0
}))
rate <- function(worth) function(g) lower(seq_along(g), rep(1, length(g)), g, worth)
rank. <- function(worth) function(g) { value <- -seq_along(g); above(value[g == 1], value[g == 0], worth) }
how <- "every order by combn, coxph score test"
row("aim-rate-4", "ratio 0.2, 4 per group", listed(4, .2, rate(1)), "1e-9", how)
row("aim-rate-6", "ratio 0.2, 6 per group", listed(6, .2, rate(1)), "1e-9", how)
row("aim-rate-worth-6", "ratio 0.1 and worth 0.7, 6 per group", listed(6, .1, rate(.7)), "1e-9", how)
how <- "every order by combn, Brunner-Munzel and wilcox.test"
row("aim-rank-4", "chance 0.9, 4 per group", listed(4, 9, rank.(.5)), "1e-9", how)
row("aim-rank-6", "chance 0.9, 6 per group", listed(6, 9, rank.(.5)), "1e-9", how)
row("aim-rank-worth-6", "chance 0.95 and worth 0.6, 6 per group", listed(6, 19, rank.(.6)), "1e-9", how)
set.seed(1)
studies <- 4000
simulated <- function(n, theta, seen) mean(replicate(studies, {
  t <- c(rexp(n, theta), rexp(n)); end <- -log(1 - seen)
  lower(pmin(t, end), as.integer(t <= end), rep(1:0, each = n), 1)
}))
wide <- "0.053"
note <- "4000 simulated studies; three and a half errors of 1000"
row("aim-rate-12", "ratio 0.3, 12 per group", simulated(12, .3, 1), wide, note)
row("aim-rate-seen-15", "ratio 0.25 and 60 % of the control seen, 15 per group", simulated(15, .25, .6), wide, note)
ranks <- mean(replicate(studies, above(-rexp(12, 4), -rexp(12), .5)))
row("aim-rank-12", "chance 0.8, 12 per group", ranks, wide, note)
