# Oracle values for org.twinbar.method.timeconstant: writes its curves and prints the rows of checks.csv whose source is R.
# Run: Rscript core/src/test/R/timeconstant.R
# Made with R 4.2.2. The readings are invented.
folder <- "core/src/test/resources/org/twinbar/method/timeconstant/"
row <- function(id, quantity, inputs, expected, tolerance, source)
  cat(sprintf('%s,%s,%s,%.12g,%s,%s\n', id, quantity, inputs, expected, tolerance, source))
save <- function(name, what, time, temperature, digits) {
  file <- file(paste0(folder, name), "w")
  cat("# ", what, "\n# Made by core/src/test/R/timeconstant.R with R 4.2.2; licence: that of Twinbar.\n", sep = "", file = file)
  cat("time_s,temperature_C\n", file = file)
  cat(sprintf(paste0("%g,%.", digits, "f\n"), time, temperature), sep = "", file = file)
  close(file)
}
# A dummy with noise of 0.15 K that each reading shares in part with the one before.
set.seed(52)
time <- seq(0, 1200, 20)
noise <- as.numeric(filter(rnorm(length(time), 0, 0.12), 0.5, "recursive"))
temperature <- round(60 - 38 * exp(-time / 280) + noise, 2)
save("step.csv", "An invented dummy that goes from 22 to 60 degrees C, with noise.", time, temperature, 2)
fit <- nls(temperature ~ a - b * exp(-time / tau), start = list(a = 60, b = 40, tau = 300))
se <- summary(fit)$coefficients[, 2]
e <- residuals(fit)
r <- sum(e[-1] * e[-length(e)]) / sum(e^2)
wide <- sqrt((1 + r) / (1 - r))
row("step-tau", "time constant (s)", "step.csv", coef(fit)["tau"], "1e-6rel", "R 4.2.2 nls")
row("step-tau-u", "its standard uncertainty (s)", "step.csv", se["tau"] * wide, "1e-5rel", "R 4.2.2 nls; widened by the correlation of neighbours")
row("step-held", "temperature that it goes to (degrees C)", "step.csv", coef(fit)["a"], "1e-7rel", "R 4.2.2 nls")
row("step-held-u", "its standard uncertainty (K)", "step.csv", se["a"] * wide, "1e-5rel", "R 4.2.2 nls; widened by the correlation of neighbours")
row("step-df", "degrees of freedom", "step.csv", length(e) / wide^2 - 3, "1e-5rel", "R 4.2.2: as many independent readings; less three")
# The middle of a slab of 4 mm in air: PLA of METHODS D.4, h 10 W/(m2K). The first root of z tan z = Bi tells the last
# exponential (Carslaw and Jaeger, Conduction of heat in solids, 3.11), here with 40 terms.
k <- 0.13; rho <- 1240; c <- 1800; h <- 10; half <- 0.002
alpha <- k / (rho * c); bi <- h * half / k
roots <- sapply(0:39, function(n) uniroot(function(z) z * sin(z) - bi * cos(z), c(n * pi + 1e-9, n * pi + pi / 2), tol = 1e-13)$root)
weight <- 4 * sin(roots) / (2 * roots + sin(2 * roots))
time <- seq(0, 1800, 15)
slab <- sapply(time, function(t) 60 - 40 * sum(weight * exp(-roots^2 * alpha * t / half^2)))
save("slab.csv", "Calculated: the middle of a PLA slab of 4 mm that goes from 20 into air of 60 degrees C.", time, slab, 6)
row("slab-tau", "time constant of a slab's middle (s)", "slab.csv", half^2 / (alpha * roots[1]^2), "2e-4rel", "R 4.2.2 uniroot: first root of z tan z = Bi; the tolerance is what the later roots leave")
