# Oracle values for org.twinbar.statistics.resampling: prints the rows of checks.csv whose source is R.
# Run: Rscript core/src/test/R/resampling.R
# Made with R 4.2.2 and boot 1.3-28.1. Everything is listed or inverted anew here: combn() lists the splits, uniroot-like
# bisection inverts the test, so that nothing of Twinbar's way (thresholds of splits) is repeated.
suppressMessages(library(boot))
row <- function(id, quantity, inputs, expected, tolerance, source)
  cat(sprintf('%s,%s,%s,%.12g,%s,%s\n', id, quantity, inputs, expected, tolerance, source))

treated <- c(47.9, 46.2, 49.0, 48.1, 45.6, 47.4)
control <- c(42.1, 44.0, 41.3, 43.5, 42.8)
near_t <- c(43.4, 44.9, 42.2, 44.6, 43.1, 45.8)   # overlaps the control, so that no share is at its smallest
shares <- function(x, y, f) {
  all <- c(x, y)
  stats <- combn(length(all), length(x), function(i) f(all[i], all[-i]))
  obs <- f(x, y)
  c(two = mean(abs(stats) >= abs(obs) - 1e-9), greater = mean(stats >= obs - 1e-9))
}
diff_means <- function(a, b) mean(a) - mean(b)
welch <- function(a, b) (mean(a) - mean(b)) / sqrt(var(a) / length(a) + var(b) / length(b))
logratio <- function(a, b) log(mean(a) / mean(b))
for (s in c("diff_means", "welch", "logratio")) {
  p <- shares(near_t, control, get(s))
  row(paste0("R-", s, "-two"), "two-sided p", "near set against control of W", p["two"], "1e-12", "R 4.2.2 combn")
  row(paste0("R-", s, "-greater"), "one-sided p", "near set against control of W", p["greater"], "1e-12", "R 4.2.2 combn")
}
# Ends by bisection on the one-sided tests at 0.025.
invert <- function(x, y, shift, from, to, side) {
  accepted <- function(d) {
    p <- { all <- c(shift(x, d), y)
           stats <- combn(length(all), length(x), function(i) mean(all[i]) - mean(all[-i]))
           obs <- mean(shift(x, d)) - mean(y)
           if (side == "low") mean(stats >= obs - 1e-11) else mean(stats <= obs + 1e-11) }
    p > 0.025
  }
  for (i in 1:60) { mid <- (from + to) / 2; if (accepted(mid)) to <- mid else from <- mid }
  (from + to) / 2
}
less <- function(x, d) x - d
over <- function(x, d) x / d
row("R-difference-low", "low end of difference", "set W", invert(treated, control, less, 0, 4.6, "low"), "1e-8", "R 4.2.2 combn and bisection")
row("R-difference-high", "high end of difference", "set W", invert(treated, control, less, 9, 4.6, "high"), "1e-8", "R 4.2.2 combn and bisection")
row("R-ratio-low", "low end of ratio", "set W", invert(treated, control, over, 0.9, 1.1, "low"), "1e-8", "R 4.2.2 combn and bisection")
row("R-ratio-high", "high end of ratio", "set W", invert(treated, control, over, 1.3, 1.1, "high"), "1e-8", "R 4.2.2 combn and bisection")

# Within blocks: the first three batches of N.8 with the second treated value of each batch lowered by 5.
u <- list(c(41.2, 42.0, 41.1), c(43.9, 44.2, 43.0), c(40.0, 40.9, 41.8))
t <- list(c(42.0, 41.1, 42.9), c(43.8, 44.9, 43.1), c(40.2, 41.6, 40.9))
sums <- lapply(1:3, function(b) combn(6, 3, function(i) sum(c(t[[b]], u[[b]])[i])))
all <- as.vector(outer(outer(sums[[1]], sums[[2]], "+"), sums[[3]], "+"))
obs <- sum(unlist(t)); centre <- sum(c(unlist(t), unlist(u))) / 2
row("R-blocks-two", "two-sided p within blocks", "three batches of 3 and 3", mean(abs(all - centre) >= abs(obs - centre) - 1e-9), "1e-12", "R 4.2.2 combn and outer")

# BCa with strata; B = 200,000, so that the ends of two seeds differ in the fourth digit.
set.seed(20261125)
d <- data.frame(y = c(treated, control), g = rep(1:2, c(6, 5)))
for (kind in c("mean", "median")) {
  f <- get(kind)
  ratio <- function(d, i) { e <- d[i, ]; f(e$y[e$g == 1]) / f(e$y[e$g == 2]) }
  minus <- function(d, i) { e <- d[i, ]; f(e$y[e$g == 1]) - f(e$y[e$g == 2]) }
  if (kind == "mean") for (s in c("ratio", "minus")) {
    b <- boot(d, get(s), 40000, strata = d$g)
    ci <- boot.ci(b, type = "bca")$bca
    tol <- if (s == "ratio") "0.002" else "0.08"
    row(paste0("R-bca-", s, "-low"), paste("BCa low end", s, "of means"), "set W", ci[4], tol, "R 4.2.2 boot 1.3-28.1; Monte Carlo and its other acceleration")
    row(paste0("R-bca-", s, "-high"), paste("BCa high end", s, "of means"), "set W", ci[5], tol, "R 4.2.2 boot 1.3-28.1; Monte Carlo and its other acceleration")
  }
}
