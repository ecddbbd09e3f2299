# Oracle values for org.twinbar.decision: what would settle an open question. Prints rows of checks.csv.
# Run: Rscript core/src/test/R/settling.R
# Made with R 4.2.2 and survival 3.5.
suppressMessages(library(survival))
src <- paste0("R ", getRversion(), " core/src/test/R/settling.R")
row <- function(id, quantity, inputs, expected, tolerance, how)
  cat(sprintf('%s,%s,"%s",%.12g,%s,"%s: %s"\n', id, quantity, inputs, expected, tolerance, src, how))
# Exact power of two shares: every outcome, Agresti-Caffo held at none by Fisher's exact test.
low <- function(x, y, n) {
  a <- (x + 1) / (n + 2); b <- (y + 1) / (n + 2)
  h <- qnorm(.975) * sqrt(a * (1 - a) / (n + 2) + b * (1 - b) / (n + 2))
  l <- max(-1, a - b - h); u <- min(1, a - b + h)
  if (fisher.test(matrix(c(x, n - x, y, n - y), 2))$p.value > .05) { l <- min(0, l); u <- max(0, u) }
  c(l, u)
}
power <- function(n, pt, pc, ok) {
  s <- 0
  for (x in 0:n) for (y in 0:n) if (ok(low(x, y, n))) s <- s + dbinom(x, n, pt) * dbinom(y, n, pc)
  s
}
shares <- function(name, pt, pc, ok, words) {
  n <- 3
  while (power(n, pt, pc, ok) < .8) n <- n + 1
  row(paste0("settle-", name, "-n"), "fewest per group for 80 %", words, n, "0.5", "every outcome listed, dbinom and fisher.test")
  row(paste0("settle-", name, "-power"), "power with them", words, power(n, pt, pc, ok), "1e-9", "every outcome listed, dbinom and fisher.test")
}
shares("share", .9, .4, function(i) i[1] > 0, "shares 0.9 and 0.4, higher")
shares("share-worth", .95, .35, function(i) i[1] >= .2, "shares 0.95 and 0.35, worth 0.2")
shares("share-lower", .1, .5, function(i) i[2] < 0, "shares 0.1 and 0.5, lower")
shares("share-same", .9, .9, function(i) i[1] >= -.3 && i[2] <= .3, "shares 0.9 and 0.9, same within 0.3")
# Tolerance limit that clears a level: the parts' mean lies z of their deviations above it.
level <- function(n, z, p) pt(qt(.95, n - 1, ncp = qnorm(p) * sqrt(n)), n - 1, ncp = z * sqrt(n), lower.tail = FALSE)
for (z in c(2, 3)) {
  n <- 3
  while (level(n, z, .9) < .8) n <- n + 1
  row(paste0("settle-level-", z, "-n"), "fewest for 80 %", sprintf("90 %% of parts, level %g deviations below the mean", z), n, "0.5", "qt and pt with ncp")
  row(paste0("settle-level-", z, "-power"), "power with them", sprintf("90 %% of parts, level %g deviations below the mean", z), level(n, z, .9), "1e-7", "qt and pt with ncp")
}
counted <- function(n, p, share) sum(dbinom((0:n)[sapply(0:n, function(x) x > 0 && qbeta(.05, x, n - x + 1) >= share)], n, p))
n <- 3
while (counted(n, .95, .8) < .8) n <- n + 1
row("settle-counted-n", "fewest for 80 %", "95 % clear it, 80 % asked", n, "0.5", "qbeta and dbinom")
row("settle-counted-power", "power with them", "95 % clear it, 80 % asked", counted(n, .95, .8), "1e-9", "qbeta and dbinom")
# Blocks: mean of m block effects, their deviation s, distance d.
blocks <- function(m, d, s) pt(qt(.975, m - 1), m - 1, ncp = d * sqrt(m) / s, lower.tail = FALSE)
n <- 3
while (blocks(n, 2, 1.8) < .8) n <- n + 1
row("settle-blocks-n", "fewest blocks for 80 %", "distance 2, deviation of a block's effect 1.8", n, "0.5", "qt and pt with ncp")
row("settle-blocks-power", "power with them", "distance 2, deviation of a block's effect 1.8", blocks(n, 2, 1.8), "1e-7", "qt and pt with ncp")
# Rates: treated times from the control's curve to the power of the ratio; the score test at 1 (Efron), below.
set.seed(1)
t <- c(2, 5, 5, 9, 14, 24, 24, 24); e <- c(1, 1, 1, 1, 1, 0, 0, 0)
f <- survfit(Surv(t, e) ~ 1); s <- c(summary(f)$surv); at <- summary(f)$time
draw <- function(n, theta) { k <- findInterval(-runif(n), -s^theta, left.open = TRUE) + 1; cbind(c(at, 24)[k], c(rep(1, length(at)), 0)[k]) }
one <- function(n, theta) {
  d <- rbind(draw(n, theta), draw(n, 1)); g <- rep(1:0, each = n)
  if (!any(d[, 2] == 1)) return(FALSE)
  m <- suppressWarnings(coxph(Surv(d[, 1], d[, 2]) ~ g, init = 0, control = coxph.control(iter.max = 0)))
  o <- survdiff(Surv(d[, 1], d[, 2]) ~ g)
  isTRUE(m$score > qnorm(.975)^2 && o$obs[2] < o$exp[2])
}
for (n in c(12, 20)) {
  p <- mean(replicate(4000, one(n, 0.25)))
  row(paste0("settle-rate-", n), "power", sprintf("leaks 2 5 5 9 14 24+ 24+ 24+, ratio 0.25, %d per group", n), p, "0.11", "4000 simulated studies, coxph score test with Efron ties; three and a half errors of 250 studies")
}
w <- list(a = c(1, 2, 2, 3, 5, 5, 6, 7, 9, 9, 4), b = c(3, 5, 6, 6, 8, 9, 9, 10, 11, 12))
row("settle-rank-p", "two-sided p by the normal approximation", "11 and 10 values with ties", suppressWarnings(wilcox.test(w$b, w$a, exact = FALSE, correct = TRUE)$p.value), "1e-9", "wilcox.test")
