import { invalidField, refuse } from '../refusal.ts'
import type { Command } from '../wire.ts'
import type { World } from '../world.ts'
import { reachGuild } from './access.ts'
import { noContent, ok, type Route, type Routes } from './route.ts'

const GLOBAL = 'global'

type Declared = Partial<Command> & Pick<Command, 'name'>

/** Declaring chat commands, for everybody or for one server. */
export const commandRoutes: Routes = {
  ...routesUnder('/applications/{application_id}/commands'),
  ...routesUnder('/applications/{application_id}/guilds/{guild_id}/commands'),
}

function routesUnder(path: string): Routes {
  return {
    [`GET ${path}`]: at((world, scope) => ok(commandsIn(world, scope))),
    [`PUT ${path}`]: at((world, scope, { body }) => {
      const declared = (body ?? []) as Declared[]
      checkNames(declared)
      const kept = declared.map((one) => keep(world, scope, one))
      world.commands.set(scope, kept)
      count(world, scope)
      return ok(kept)
    }),
    [`POST ${path}`]: at((world, scope, { body }) => {
      const declared = body as Declared
      const others = commandsIn(world, scope).filter((c) => c.name !== declared.name)
      const known = others.length < commandsIn(world, scope).length
      const kept = keep(world, scope, declared)
      world.commands.set(scope, [...others, kept])
      count(world, scope)
      return { status: known ? 200 : 201, body: kept }
    }),
    [`GET ${path}/{command_id}`]: at((world, scope, { params }) => ok(find(world, scope, params.at(-1)!))),
    [`PATCH ${path}/{command_id}`]: at((world, scope, { params, body }) => {
      const current = find(world, scope, params.at(-1)!)
      const change = body as Declared
      const permissions = change.default_member_permissions ?? current.default_member_permissions
      const kept = {
        ...current,
        ...change,
        default_member_permissions: bits(permissions),
        id: current.id,
        version: world.nextId(),
      }
      world.commands.set(
        scope,
        commandsIn(world, scope).map((c) => (c === current ? kept : c)),
      )
      count(world, scope)
      return ok(kept)
    }),
    [`DELETE ${path}/{command_id}`]: at((world, scope, { params }) => {
      const gone = find(world, scope, params.at(-1)!)
      world.commands.set(
        scope,
        commandsIn(world, scope).filter((c) => c !== gone),
      )
      return noContent()
    }),
  }
}

type Work = (world: World, scope: string, request: Parameters<Route>[1]) => ReturnType<Route>

function at(work: Work): Route {
  return ({ world }, request) => {
    const [applicationId, second] = request.params
    if (applicationId !== world.bot.id) throw refuse.missingAccess()
    const inGuild = second !== undefined && world.guilds.has(second)
    return work(world, inGuild ? reachGuild(world, second).id : GLOBAL, request)
  }
}

function commandsIn(world: World, scope: string): Command[] {
  return world.commands.get(scope) ?? []
}

function find(world: World, scope: string, id: string): Command {
  const command = commandsIn(world, scope).find((c) => c.id === id)
  if (!command) throw refuse.unknownCommand()
  return command
}

// a command keeps its id for as long as its name stays
function keep(world: World, scope: string, declared: Declared): Command {
  const known = commandsIn(world, scope).find((c) => c.name === declared.name)
  return {
    description: '',
    nsfw: false,
    type: 1,
    ...declared,
    default_member_permissions: bits(declared.default_member_permissions),
    id: known?.id ?? world.nextId(),
    application_id: world.bot.id,
    version: world.nextId(),
    ...(scope === GLOBAL ? {} : { guild_id: scope }),
  }
}

// declared as a number or as digits, given back as digits
function bits(permissions: string | number | null | undefined): string | null {
  return permissions == null ? null : String(permissions)
}

function checkNames(declared: readonly Declared[]): void {
  const names = declared.map((c) => `${c.type ?? 1} ${c.name}`)
  if (new Set(names).size === names.length) return
  throw invalidField(
    'name',
    'APPLICATION_COMMANDS_DUPLICATE_NAME',
    'Application command names must be unique',
  )
}

function count(world: World, scope: string): void {
  world.registrations.set(scope, (world.registrations.get(scope) ?? 0) + 1)
}
